package taperbook.chart.plots;

import static org.assertj.core.api.Assertions.assertThat;

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
import taperbook.chart.render.Figure;
import taperbook.metric.ReportMetrics;
import taperbook.metric.Sessions;
import taperbook.plan.RoadTopic;
import taperbook.plan.RoadWishes;
import taperbook.plan.Trip;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.ReportResult;
import taperbook.session.Channel;
import taperbook.session.RangeItem;

final class RoadFiguresTest {
  private static List<Figure> figures = List.of();

  private static ReportResult result(RoadWishes road) {
    double[] seconds = new double[86];
    double[] soc = new double[86];
    for (int i = 0; i < seconds.length; i++) {
      soc[i] = 5 + i;
      seconds[i] = Math.rint(1800 * Math.log(150 / (150 - 1.2 * i)));
    }
    return ReportMetrics.measure(
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
        FigureSet.ofRoad(result(new RoadWishes(EnumSet.allOf(RoadTopic.class), Optional.of(trip))));
  }

  private static Figure figure(String id) {
    return figures.stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void road_figures_are_drawn_only_if_requested() {
    // One drive is not sufficient for the range over speed.
    assertThat(figures.stream().map(Figure::id))
        .containsExactly("plug-in-table", "road-per-minute", "trip-timeline");
    assertThat(FigureSet.ofRoad(result(RoadWishes.NONE))).isEmpty();
  }

  @Test
  void each_cell_of_the_table_has_minutes_and_interval_as_text() {
    String svg = figure("plug-in-table").svg().replace('\u00a0', ' ');
    // By the closed form, 1800 ln((150 - 1.2 x 15) / (150 - 1.2 x 40)) s = 7.7 min from 20 %.
    assertThat(svg).contains(">7.7</text>").contains(">200 km</text>").contains(">60 %</text>");
    assertThat(svg).containsPattern(">7\\.[0-9] to [78]\\.[0-9]</text>");
  }

  @Test
  void a_withheld_cell_is_a_dash_and_is_described() {
    Figure table = figure("plug-in-table");
    assertThat(table.textAlternative()).contains("From 0 %: 50 km withheld");
    assertThat(table.svg()).contains(">\u2013</text>");
  }

  @Test
  void the_timeline_shows_the_charge_at_both_ends_of_each_stop() {
    Figure timeline = figure("trip-timeline");
    assertThat(timeline.svg().replace('\u00a0', ' '))
        .containsPattern(">to [0-9]+ % in [0-9]+ min</text>")
        .containsPattern(">[0-9]+ %</text>")
        .contains(">100 %</text>")
        .containsPattern(">[0-9]+ h [0-9]+ min with [0-9] stops</text>");
    assertThat(timeline.textAlternative()).contains("State of charge over 800 km");
  }

  @Test
  void the_distance_per_minute_names_its_best_stretch_without_readings() {
    Figure line = figure("road-per-minute");
    assertThat(line.caption().replace('\u00a0', ' ')).contains("A minute buys most");
    assertThat(line.svg()).doesNotContain("readings.</text>").contains("km/min");
  }

  @Test
  void equal_results_give_equal_bytes_at_film_size() throws IOException {
    BufferedImage picture = ImageIO.read(new ByteArrayInputStream(figure("plug-in-table").png()));
    assertThat(picture.getWidth()).isEqualTo(1920);
    assertThat(picture.getHeight()).isEqualTo(1080);
    assertThat(figure("trip-timeline").png()).isEqualTo(figure("trip-timeline").png());
  }
}
