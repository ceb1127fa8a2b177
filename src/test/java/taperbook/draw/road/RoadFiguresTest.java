package taperbook.draw.road;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import taperbook.draw.picture.Figure;
import taperbook.draw.style.Box;
import taperbook.draw.style.Hatch;
import taperbook.measure.ReportMeasuring;
import taperbook.measure.Sessions;
import taperbook.model.Channel;
import taperbook.model.Estimate;
import taperbook.model.RangeItem;
import taperbook.model.ReportResult;
import taperbook.model.RoadTopic;
import taperbook.model.RoadWishes;
import taperbook.model.Trip;
import taperbook.model.Unit;
import taperbook.model.WantedDistance;

final class RoadFiguresTest {
  private static List<Figure> figures = List.of();

  private static ReportResult result(RoadWishes road) {
    double[] seconds = new double[86];
    double[] soc = new double[86];
    for (int i = 0; i < seconds.length; i++) {
      soc[i] = 5 + i;
      seconds[i] = Math.rint(1800 * Math.log(150 / (150 - 1.2 * i)));
    }
    return ReportMeasuring.measure(
        Sessions.roadPlan(List.of(new WantedDistance(100, Unit.KILOMETRE)), road),
        Sessions.session().channel(Channel.SOC, 0.5, seconds, soc).build(),
        List.of(),
        List.of(
            Sessions.rangeTest(
                Map.of(
                    RangeItem.DISTANCE, Estimate.exactly(400),
                    RangeItem.START_SOC, Estimate.exactly(100),
                    RangeItem.END_SOC, Estimate.exactly(0),
                    RangeItem.AVERAGE_SPEED, Estimate.exactly(100)))));
  }

  @BeforeAll
  static void draw() {
    Trip trip =
        new Trip(
            new WantedDistance(800, Unit.KILOMETRE),
            new WantedDistance(50, Unit.KILOMETRE),
            300,
            100,
            10);
    figures =
        RoadFigures.draw(result(new RoadWishes(EnumSet.allOf(RoadTopic.class), Optional.of(trip))));
  }

  private static Figure figure(String id) {
    return figures.stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void figures_of_the_road_are_drawn_only_if_they_are_asked_for() {
    // One drive gives no range over speed.
    assertThat(figures.stream().map(Figure::id))
        .containsExactly("plug-in-table", "road-per-minute", "trip-timeline");
    assertThat(RoadFigures.draw(result(RoadWishes.NONE))).isEmpty();
  }

  @Test
  void each_cell_of_the_table_says_its_minutes_and_interval_as_text() {
    String svg = figure("plug-in-table").svg().replace('\u00a0', ' ');
    // By the solution 1800 ln((150 - 1.2 x 15) / (150 - 1.2 x 40)) s = 7.7 min from 20 % on.
    assertThat(svg).contains(">7.7 min</text>").contains(">200 km</text>").contains(">60 %</text>");
    assertThat(svg).containsPattern(">7\\.[0-9] to [78]\\.[0-9]</text>");
  }

  @Test
  void a_cell_that_is_withheld_is_hatched_and_told() {
    Figure table = figure("plug-in-table");
    assertThat(table.textAlternative()).contains("From 0 %: 50 km withheld");
    assertThat(table.svg()).contains("<line");
  }

  @Test
  void the_timeline_says_the_charge_at_both_ends_of_each_stop() {
    Figure timeline = figure("trip-timeline");
    assertThat(timeline.svg().replace('\u00a0', ' '))
        .containsPattern(">[0-9]+ to [0-9]+ %</text>")
        .contains(">100 %</text>")
        .contains("Northmoor Finch: ");
    assertThat(timeline.textAlternative()).contains("Timeline of a trip of 800 km");
  }

  @Test
  void the_line_of_a_minute_names_its_best_stretch_and_says_nothing_of_readings() {
    Figure line = figure("road-per-minute");
    assertThat(line.caption().replace('\u00a0', ' ')).contains("A minute buys most");
    assertThat(line.svg()).doesNotContain("readings.</text>").contains("km/min");
  }

  @Test
  void the_same_result_gives_the_same_bytes_at_film_size() throws IOException {
    BufferedImage picture = ImageIO.read(new ByteArrayInputStream(figure("plug-in-table").png()));
    assertThat(picture.getWidth()).isEqualTo(1920);
    assertThat(picture.getHeight()).isEqualTo(1080);
    assertThat(figure("trip-timeline").png()).isEqualTo(figure("trip-timeline").png());
  }

  @Test
  void hatching_stays_inside_its_box() {
    BufferedImage canvas = new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = canvas.createGraphics();
    g.setColor(Color.WHITE);
    Hatch.fill(g, new Box(20, 10, 20, 20), 6);
    g.dispose();
    int inside = 0;
    for (int x = 0; x < 60; x++) {
      for (int y = 0; y < 40; y++) {
        boolean painted = (canvas.getRGB(x, y) & 0xff) > 0;
        boolean in = x >= 19 && x <= 41 && y >= 9 && y <= 31;
        assertThat(painted && !in).as(x + ", " + y).isFalse();
        inside += painted ? 1 : 0;
      }
    }
    assertThat(inside).isGreaterThan(40);
  }
}
