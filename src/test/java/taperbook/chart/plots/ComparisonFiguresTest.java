package taperbook.chart.plots;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import taperbook.chart.render.Figure;
import taperbook.quantity.Unit;
import taperbook.result.CommonGround;
import taperbook.result.ReportResult;

final class ComparisonFiguresTest {
  @Test
  void a_report_without_comparison_has_no_comparison_figures() {
    assertThat(FigureSet.ofComparison(InventedSession.handRead().result())).isEmpty();
  }

  @Test
  void figures_are_in_order_with_one_difference_for_each_pair() {
    assertThat(FigureSet.ofComparison(Comparisons.named("three")))
        .extracting(Figure::id)
        .containsExactly(
            "compare-over-soc",
            "compare-over-time",
            "difference-over-soc",
            "difference-over-soc-2",
            "c-rate-over-soc");
  }

  @Test
  void a_pair_without_overlap_has_no_difference_and_the_text_states_it() {
    ReportResult result = Comparisons.named("no-window");
    assertThat(FigureSet.ofComparison(result))
        .extracting(Figure::id)
        .containsExactly("compare-over-soc", "compare-over-time");
    assertThat(figure(result, "compare-over-soc").caption())
        .contains("There is no state of charge that all of them went through.");
    assertThat(figure(result, "compare-over-soc").svg()).doesNotContain("in common");
  }

  @Test
  void power_per_kilowatt_hour_is_drawn_only_if_batteries_differ_by_more_than_two_per_cent() {
    assertThat(withEnergies(60, 60 / 1.019)).doesNotContain("c-rate-over-soc");
    assertThat(withEnergies(60, 60 / 1.021)).contains("c-rate-over-soc");
  }

  @Test
  void unstated_usable_energy_is_implied_by_the_session() {
    InventedSession stated = Comparisons.second();
    InventedSession silent = InventedSession.logger().named("silent", "Veldt Carrier");
    assertThat(ids(InventedComparison.of(4, stated, silent))).doesNotContain("c-rate-over-soc");
    silent.measured("implied_full_energy", Unit.KILOWATT_HOUR, 91.8, 1);
    Figure figure = figure(InventedComparison.of(4, stated, silent), "c-rate-over-soc");
    // By hand: 171 kW / 60 kWh and 183.6 kW / 91.8 kWh.
    assertThat(plain(figure.caption()))
        .contains("2.85 kW/kWh in A (Northmoor Finch, second battery revision) with 60 kWh")
        .contains("2.00 kW/kWh in B (Veldt Carrier) with 91.8 kWh");
  }

  @Test
  void the_caption_over_charge_states_peaks_and_the_time_for_the_common_window() {
    assertThat(plain(figure(Comparisons.named("two"), "compare-over-soc").caption()))
        .contains("171 kW in A (second battery revision)")
        .contains("135 kW in B (first battery revision)")
        .contains("The time from 14 % to 82 %, which all have in common: A 25 min 55 s")
        .contains("; B 32 min 40 s (give or take 12 s).");
  }

  @Test
  void the_caption_over_time_states_the_charge_added_and_the_time_for_the_same_energy() {
    InventedSession a =
        Comparisons.second().measured("time_to_add_30_kwh_from_14", Unit.SECOND, 640, 9);
    InventedSession b =
        Comparisons.first()
            .withheld("time_to_add_30_kwh_from_14", Unit.SECOND, "no energy was read");
    ReportResult plain = InventedComparison.of(4, a, b);
    ReportResult result =
        new ReportResult(
            plain.plan(),
            plain.main(),
            plain.compared(),
            new CommonGround(plain.common().shared(), plain.common().warmed(), OptionalInt.of(30)),
            plain.pairs());
    assertThat(plain(figure(result, "compare-over-time").caption()))
        .contains("A (second battery revision) adds 49.8 kWh from 12 % to 82 % in 26 min 40 s.")
        .contains("The time to add 30 kWh from 14 % on: A 10 min 40 s (give or take 9 s);")
        .contains("B withheld: no energy was read.");
  }

  @Test
  void the_text_alternative_lists_points_of_each_line_by_name() {
    assertThat(plain(figure(Comparisons.named("two"), "compare-over-soc").textAlternative()))
        .contains("A second battery revision has 21 readings, of which 12 %: 90 kW;")
        .contains("82 %: 45 kW. 1 join spans a long gap between readings and is drawn thin.")
        .contains("B first battery revision has 18 readings, of which 14 %: 58 kW;")
        .contains("Dotted lines bound what all sessions have in common: 14 % to 82 %.");
  }

  @Test
  void a_difference_states_who_leads_where_and_where_it_is_undecided() {
    Figure figure = figure(Comparisons.named("two"), "difference-over-soc");
    assertThat(plain(figure.caption()))
        .contains("Over the 14 % to 82 % that both went through, A took 23.1 kW")
        .contains("A takes more from 14 % to 54 %, by 35.1 kW (give or take 1.9 kW) on the mean;")
        .contains("B takes more from 78.5 % to 82 %, by 6 kW")
        .contains("elsewhere the readings cannot distinguish them.")
        .contains("The curves cross at 76.2 % (give or take 2.3 %).");
    assertThat(plain(figure.textAlternative()))
        .contains("14 %: 74 kW (70 to 78);")
        .contains("82 %: \u221210 kW (\u221214 to \u22126).")
        .contains("and was quicker there by 2 min 20 s");
  }

  @Test
  void a_reversed_difference_names_the_other_session_without_a_negative_amount() {
    ReportResult turned = InventedComparison.of(4, Comparisons.first(), Comparisons.second());
    assertThat(plain(figure(turned, "difference-over-soc").caption()))
        .contains("B took 23.1 kW")
        .contains("more than A on average over state of charge.")
        .contains("B takes more from 14 % to 54 %, by 35.1 kW")
        .doesNotContain("\u2212");
  }

  @Test
  void a_difference_draws_its_bar_in_patterns_its_zero_and_its_crossing() {
    String svg = figure(Comparisons.named("two"), "difference-over-soc").svg();
    assertThat(svg)
        .contains(
            ">second battery revision takes more<",
            ">cross at 76.2",
            ">cannot tell<",
            ">20<",
            ">0<");
    assertThat(figure(Comparisons.named("same-curve"), "difference-over-soc").svg())
        .contains(">cannot tell<")
        .doesNotContain(" takes more<");
  }

  @Test
  void indistinguishable_curves_are_reported_as_such() {
    assertThat(figure(Comparisons.named("same-curve"), "difference-over-soc").caption())
        .contains("The readings cannot distinguish them anywhere.");
  }

  @Test
  void many_leads_are_counted_in_the_caption_and_listed_in_the_text() {
    Figure figure = figure(Comparisons.named("logger-and-hand"), "difference-over-soc");
    assertThat(figure.caption())
        .containsPattern("A takes more in \\d+ stretches and B takes more in 1 stretch;");
    assertThat(figure.textAlternative()).contains("B took more power than A");
  }

  @Test
  void each_stretch_of_a_dashed_line_is_one_path_with_a_continuous_dash() {
    // Four long gaps end the first battery's session; the readings before them are one stretch.
    String svg = figure(Comparisons.named("two"), "compare-over-soc").svg();
    Pattern dashed =
        Pattern.compile("d=\"m([^\"]*)\" [^>]*stroke-width=\"2.4\" stroke-dasharray=\"10.1,3.8\"");
    assertThat(
            dashed
                .matcher(svg)
                .results()
                .flatMap(path -> Stream.of(path.group(1).split("m", -1)))
                .map(ComparisonFiguresTest::corners))
        .contains(12);
  }

  /** Number of corners of a stretch of straight lines after its first one. */
  private static int corners(String stretch) {
    return stretch.substring(stretch.indexOf('l') + 1).split(" ", -1).length / 2;
  }

  @Test
  void a_session_without_power_is_not_drawn_and_the_others_keep_their_letters() {
    ReportResult result = Comparisons.named("one-without-power");
    Figure figure = figure(result, "compare-over-soc");
    assertThat(figure.caption()).contains("Not drawn for want of readings: C.");
    InventedSession dark = InventedSession.socAndTime().named("dark", "Northmoor Finch, dark");
    ReportResult first = InventedComparison.of(4, dark, Comparisons.second(), Comparisons.first());
    Figure others = figure(first, "compare-over-soc");
    assertThat(others.svg()).contains(">B second battery revision<", ">C first battery revision<");
    assertThat(others.png()).isNotEmpty();
  }

  @Test
  void sessions_beyond_the_letters_are_omitted_and_the_text_states_it() {
    InventedSession[] others = new InventedSession[7];
    for (int i = 0; i < others.length; i++) {
      others[i] = Comparisons.any(new Random(i), "number " + i);
    }
    ReportResult result = InventedComparison.of(4, Comparisons.second(), others);
    assertThat(figure(result, "compare-over-soc").caption())
        .contains("Only the first 6 sessions are drawn.");
    assertThat(ids(result))
        .contains("difference-over-soc-5")
        .doesNotContain("difference-over-soc-6");
  }

  @Test
  void equal_comparisons_give_equal_bytes() {
    List<Figure> first = FigureSet.ofComparison(Comparisons.named("three"));
    List<Figure> again = FigureSet.ofComparison(Comparisons.named("three"));
    for (int i = 0; i < first.size(); i++) {
      assertThat(again.get(i).svg()).isEqualTo(first.get(i).svg());
      assertThat(again.get(i).png()).isEqualTo(first.get(i).png());
    }
  }

  private static List<String> withEnergies(double a, double b) {
    return ids(
        InventedComparison.of(
            4,
            Comparisons.second().usableKilowattHours(a),
            Comparisons.first().usableKilowattHours(b)));
  }

  private static List<String> ids(ReportResult result) {
    return FigureSet.ofComparison(result).stream().map(Figure::id).toList();
  }

  private static Figure figure(ReportResult result, String id) {
    return FigureSet.ofComparison(result).stream()
        .filter(d -> d.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }
}
