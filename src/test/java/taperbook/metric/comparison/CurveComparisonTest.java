package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.metric.course.Courses;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.result.Curve;
import taperbook.result.Outcome;
import taperbook.result.PairResult;
import taperbook.result.ReportNumber;
import taperbook.result.Stretch;
import taperbook.session.Channel;
import taperbook.session.Session;

/** The shared window by hand, what is withheld, and how a pair becomes numbers. */
final class CurveComparisonTest {
  private static PairResult compare(Session one, Session other) {
    return CurveComparison.of(
        new Courses(one, Optional.empty(), Courses.FEW),
        new Courses(other, Optional.empty(), Courses.FEW),
        other.name(),
        List.of());
  }

  private static PairResult byHand() {
    return CurveComparison.of(
        Pairs.courses("one", 3), Pairs.courses("other", 4), "the other", List.of());
  }

  private static Estimate estimate(PairResult pair, String id) {
    return pair.numbers().estimate(id).orElseThrow();
  }

  private static double coverage(PairResult pair, String id) {
    ReportNumber number = pair.numbers().find(id).orElseThrow();
    return number.outcome().fold(Outcome.Measured::coverage, withheld -> Double.NaN);
  }

  @Test
  void the_window_runs_from_the_later_start_to_the_earlier_end() {
    PairResult pair = compare(steady("one", 10, 60, 0.5), steady("other", 10.2, 60.2, 1));
    assertThat(pair.other()).isEqualTo("other");
    assertThat(pair.shared()).contains(new Interval(10.2, 60));
    // From 9.5 to 10.5 and from 9.2 to 11.2; until 59.5 to 60.5 and until 59.2 to 61.2.
    Estimate from = estimate(pair, "shared_soc_from");
    assertThat(from.value()).isEqualTo(10.2);
    assertThat(from.bounds().low()).isCloseTo(9.5, within(1e-9));
    assertThat(from.bounds().high()).isCloseTo(11.2, within(1e-9));
    Estimate to = estimate(pair, "shared_soc_to");
    assertThat(to.value()).isEqualTo(60);
    assertThat(to.bounds().low()).isCloseTo(59.2, within(1e-9));
    assertThat(to.bounds().high()).isCloseTo(60.5, within(1e-9));
    assertThat(coverage(pair, "shared_soc_from")).isEqualTo(1);
    assertThat(coverage(pair, "shared_soc_to")).isEqualTo(1);
    assertThat(coverage(pair, "mean_lead_shared")).isEqualTo(0.95);
    assertThat(coverage(pair, "time_gain_shared")).isEqualTo(0.95);
  }

  @Test
  void one_per_cent_is_enough_to_compare() {
    assertThat(compare(steady("one", 10, 40, 0.5), steady("other", 39, 70, 0.5)).shared())
        .contains(new Interval(39, 40));
    assertThat(compare(steady("one", 10, 40, 0.5), steady("other", 39.125, 70, 0.5)).shared())
        .isEmpty();
  }

  @Test
  void each_lead_has_its_edges_exactly_and_its_numbers_with_intervals() {
    PairResult pair = byHand();
    List<Stretch.Ids> led = pair.stretches().stream().flatMap(s -> s.ids().stream()).toList();
    assertThat(led).isNotEmpty();
    for (int k = 0; k < led.size(); k++) {
      String id = "lead_" + (k + 1) + "_";
      assertThat(led.get(k))
          .isEqualTo(
              new Stretch.Ids(id + "soc_from", id + "soc_to", id + "power", id + "time_gain"));
    }
    for (Stretch stretch : pair.stretches()) {
      assertThat(stretch.ids().isPresent()).isEqualTo(stretch.order() != Stretch.Order.UNDECIDED);
      stretch.ids().ifPresent(ids -> checkLead(pair, stretch, ids));
    }
    assertThat(pair.numbers().all()).hasSize(4 + 4 * led.size() + pair.crossings().size());
  }

  private static void checkLead(PairResult pair, Stretch stretch, Stretch.Ids ids) {
    assertThat(estimate(pair, ids.from())).isEqualTo(Estimate.exactly(stretch.from()));
    assertThat(estimate(pair, ids.to())).isEqualTo(Estimate.exactly(stretch.to()));
    double sign = stretch.order() == Stretch.Order.AHEAD ? 1 : -1;
    assertThat(sign * estimate(pair, ids.lead()).value()).isPositive();
    for (String id : List.of(ids.lead(), ids.gain())) {
      Estimate estimate = estimate(pair, id);
      assertThat(estimate.bounds().low()).as(id).isLessThan(estimate.value());
      assertThat(estimate.bounds().high()).as(id).isGreaterThan(estimate.value());
      assertThat(coverage(pair, id)).isEqualTo(0.95);
    }
  }

  @Test
  void crossings_lie_between_opposite_leads() {
    int crossings = 0;
    for (long seed = 1; seed < 8; seed++) {
      PairResult pair =
          CurveComparison.of(
              Pairs.courses("one", seed),
              Pairs.courses("other", seed + 100),
              "the other",
              List.of());
      List<Stretch> led =
          pair.stretches().stream().filter(s -> s.order() != Stretch.Order.UNDECIDED).toList();
      int k = 0;
      for (int i = 1; i < led.size(); i++) {
        if (led.get(i).order() != led.get(i - 1).order()) {
          String id = "crossing_" + (k + 1) + "_soc";
          assertThat(pair.crossings().get(k)).isEqualTo(id);
          assertThat(estimate(pair, id).bounds())
              .isEqualTo(new Interval(led.get(i - 1).to(), led.get(i).from()));
          assertThat(coverage(pair, id)).isEqualTo(0.95);
          k++;
        }
      }
      assertThat(pair.crossings()).hasSize(k);
      crossings += k;
    }
    assertThat(crossings).isPositive();
  }

  @Test
  void a_spread_between_runs_widens_the_lead_of_a_pair() {
    PairResult plain = byHand();
    PairResult spread =
        CurveComparison.of(
            Pairs.courses("one", 3), Pairs.courses("other", 4), "the other", List.of(), 0.1);
    assertThat(estimate(spread, "mean_lead_shared").bounds().width())
        .isGreaterThan(2 * estimate(plain, "mean_lead_shared").bounds().width());
  }

  @Test
  void every_number_has_the_rows_of_both_sessions() {
    PairResult pair = byHand();
    for (ReportNumber number : pair.numbers().all()) {
      assertThat(number.origin().session()).isEqualTo("one");
      assertThat(number.origin().against()).isEqualTo("other");
      assertThat(number.origin().rows().stream().map(r -> r.file()).distinct())
          .as(number.id())
          .containsExactlyInAnyOrder("sessions/one/readings.csv", "sessions/other/readings.csv");
    }
  }

  @Test
  void swapping_the_sessions_mirrors_the_lead() {
    PairResult pair = byHand();
    PairResult swapped =
        CurveComparison.of(
            Pairs.courses("other", 4), Pairs.courses("one", 3), "the one", List.of());
    for (String id : List.of("mean_lead_shared", "time_gain_shared")) {
      assertThat(estimate(swapped, id)).isEqualTo(estimate(pair, id).times(-1));
    }
    assertThat(swapped.shared()).isEqualTo(pair.shared());
    Curve curve = pair.difference().orElseThrow();
    Curve mirror = swapped.difference().orElseThrow();
    assertThat(mirror.size()).isEqualTo(curve.size());
    for (int i = 0; i < curve.size(); i++) {
      assertThat(mirror.y(i)).isEqualTo(-curve.y(i));
      assertThat(mirror.low(i)).isEqualTo(-curve.high(i));
    }
  }

  @Test
  void sessions_without_overlap_are_withheld_with_the_reason() {
    PairResult pair = compare(steady("low", 10, 40, 0.5), steady("high", 40, 80, 0.5));
    assertWithheld(pair, "the two sessions share less than 1 % of state of charge");
  }

  @Test
  void a_session_without_power_is_withheld_with_the_reason() {
    double[] seconds = {0, 600, 1200};
    Session bare =
        Sessions.session()
            .named("bare")
            .channel(Channel.SOC, 0.5, seconds, new double[] {10, 40, 70})
            .build();
    assertWithheld(compare(steady("one", 10, 60, 0.5), bare), "no power was recorded in bare");
    assertWithheld(compare(bare, steady("one", 10, 60, 0.5)), "no power was recorded in bare");
  }

  @Test
  void a_session_of_one_row_shares_nothing() {
    Session row =
        Sessions.session()
            .named("row")
            .channel(Channel.SOC, 0.5, new double[] {0}, new double[] {20})
            .channel(Channel.POWER, 0.5, new double[] {0}, new double[] {90})
            .build();
    String reason = "power and state of charge were not read over the same time in row";
    assertWithheld(compare(steady("one", 10, 60, 0.5), row), reason);
    assertWithheld(compare(row, steady("one", 10, 60, 0.5)), reason);
  }

  @Test
  void a_session_without_state_of_charge_is_withheld_with_the_reason() {
    double[] seconds = {0, 600, 1200};
    Session bare =
        Sessions.session()
            .named("bare")
            .channel(Channel.POWER, 0.5, seconds, new double[] {90, 100, 70})
            .build();
    assertWithheld(
        compare(steady("one", 10, 60, 0.5), bare), "no state of charge was recorded in bare");
  }

  private static void assertWithheld(PairResult pair, String reason) {
    assertThat(pair.shared()).isEmpty();
    assertThat(pair.stretches()).isEmpty();
    assertThat(pair.crossings()).isEmpty();
    assertThat(pair.difference()).isEmpty();
    assertThat(pair.numbers().all().stream().map(ReportNumber::id))
        .containsExactly(
            "shared_soc_from", "shared_soc_to", "mean_lead_shared", "time_gain_shared");
    pair.numbers().all().forEach(n -> assertThat(n.withheld()).contains(reason));
  }

  private static Session steady(String name, double from, double to, double half) {
    double[] seconds = {0, 300, 600, 900, 1200};
    double step = (to - from) / 4;
    double[] soc = {from, from + step, from + 2 * step, from + 3 * step, to};
    return Sessions.session()
        .named(name)
        .channel(Channel.SOC, half, seconds, soc)
        .channel(Channel.POWER, 0.5, seconds, new double[] {100, 100, 100, 100, 100})
        .build();
  }
}
