package taperbook.chart.plots;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import taperbook.chart.model.Palette;
import taperbook.chart.render.Figure;
import taperbook.plan.Basis;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;

final class FigureSetTest {
  @Test
  void a_session_with_all_channels_has_three_figures_in_order() {
    assertThat(FigureSet.draw(InventedSession.handRead().result()))
        .extracting(Figure::id)
        .containsExactly("power-over-soc", "power-over-time", "distance-over-time");
  }

  @Test
  void a_figure_without_a_curve_is_omitted() {
    assertThat(FigureSet.draw(InventedSession.socAndTime().result()))
        .extracting(Figure::id)
        .containsExactly("soc-over-time", "distance-over-time");
  }

  @Test
  void equal_results_give_equal_bytes() {
    List<Figure> first = FigureSet.draw(InventedSession.logger().result());
    List<Figure> again = FigureSet.draw(InventedSession.logger().result());
    for (int i = 0; i < first.size(); i++) {
      assertThat(again.get(i).svg()).isEqualTo(first.get(i).svg());
      assertThat(again.get(i).png()).isEqualTo(first.get(i).png());
      assertThat(again.get(i).textAlternative()).isEqualTo(first.get(i).textAlternative());
    }
  }

  @Test
  void a_film_picture_has_film_size_and_is_not_blank() throws IOException {
    for (Figure figure : FigureSet.draw(InventedSession.handRead().result())) {
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(figure.png()));
      assertThat(image.getWidth()).isEqualTo(1920);
      assertThat(image.getHeight()).isEqualTo(1080);
      assertThat(pixels(image, Palette.CURVE.getRGB())).isGreaterThan(1000);
    }
  }

  @Test
  void a_single_reading_has_figures() {
    InventedSession one =
        InventedSession.plain(new double[] {0}, new double[] {40}, new double[] {0});
    List<Figure> figures = FigureSet.ofSession(one.result());
    assertThat(figures).hasSize(3);
    for (Figure figure : figures) {
      assertThat(figure.textAlternative()).contains("The curve has 1 reading: ");
      assertThat(figure.svg()).contains("<circle");
    }
  }

  @Test
  void callers_cannot_change_the_bytes_of_a_picture() {
    Figure figure = FigureSet.draw(InventedSession.handRead().result()).get(0);
    figure.png()[0] = 0;
    assertThat(figure.png()[0]).isEqualTo((byte) 0x89);
  }

  @Test
  void the_caption_on_power_states_peak_hold_and_window_with_their_bounds() {
    Figure figure = figure(InventedSession.handRead(), "power-over-soc");
    assertThat(plain(figure.caption()))
        .contains("peaks at 171")
        .contains("from 17.8 % to 37.4 % of charge, for 4 min 41 s (give or take 30 s).")
        .contains("From 20 % to 80 % it takes 22 min 15 s (give or take 12 s).");
  }

  @Test
  void the_text_alternative_names_axes_ends_peak_marks_and_gaps() {
    Figure figure = figure(InventedSession.handRead(), "power-over-soc");
    assertThat(plain(figure.textAlternative()))
        .contains("Horizontal axis: state of charge in %, from 0 to 100.")
        .contains("Vertical axis: charging power in kW, from 0 to 242.")
        .contains("21 readings")
        .contains("12 %: 90 kW;")
        .contains("23 %: 171 kW;")
        .contains("82 %: 45 kW.")
        .contains("1 join spans a long gap")
        .contains("50 % is reached after 9 min 40 s")
        .contains("80 % is reached after 24 min 40 s");
  }

  @Test
  void the_text_alternative_of_distance_names_each_requested_distance() {
    Figure figure = figure(InventedSession.handRead(), "distance-over-time");
    assertThat(plain(figure.textAlternative()))
        .contains("distance added in mi")
        .contains("On the driven basis the session adds 217.5 mi in 26 min 40 s")
        .contains("100 mi in 8 min 3 s (give or take 13 s)")
        .contains("200 mi in 22 min 8 s");
  }

  @Test
  void withheld_numbers_are_listed_with_their_reason_and_not_drawn() {
    InventedSession session =
        InventedSession.handRead()
            .withheld("peak_hold_time", Unit.SECOND, "the peak was read only once")
            .distances(new WantedDistance(400, Unit.MILE));
    assertThat(figure(session, "power-over-soc").caption())
        .contains("The time at peak is withheld: the peak was read only once.");
    assertThat(figure(session, "power-over-soc").svg())
        .contains(">peak 171")
        .doesNotContain("within 2 %");
    assertThat(figure(session, "distance-over-time").caption())
        .contains("The time for 400 mi is withheld: it was not reached.");
    assertThat(figure(session, "distance-over-time").svg()).doesNotContain(">400 mi in");
  }

  @Test
  void distances_follow_the_units_and_the_basis_of_the_report() {
    InventedSession session =
        InventedSession.handRead()
            .kilometres()
            .basis(Basis.RATED)
            .distances(new WantedDistance(150, Unit.KILOMETRE));
    Figure figure = figure(session, "distance-over-time");
    assertThat(figure.title()).contains("150\u00a0km in");
    assertThat(figure.svg())
        .contains(">Distance added in km by time since plugging in, rated basis")
        .contains(">150 km in");
    assertThat(plain(figure.caption())).contains("On the rated basis the session adds 350 km");
  }

  private static Figure figure(InventedSession session, String id) {
    return FigureSet.draw(session.result()).stream()
        .filter(f -> f.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }

  private static int pixels(BufferedImage image, int rgb) {
    int count = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        count += image.getRGB(x, y) == rgb ? 1 : 0;
      }
    }
    return count;
  }
}
