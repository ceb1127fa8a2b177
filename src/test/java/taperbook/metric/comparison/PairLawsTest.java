package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.metric.course.Courses;
import taperbook.metric.course.ReadByHand;
import taperbook.metric.course.TrueCurve;
import taperbook.quantity.Estimate;
import taperbook.result.Curve;
import taperbook.result.Numbers;
import taperbook.result.PairResult;
import taperbook.result.ReportNumber;
import taperbook.result.Stretch;
import taperbook.result.Stretch.Order;
import taperbook.session.Session;

/** Properties of every comparison of two sessions, with invented sessions read by hand. */
@Tag("slow")
final class PairLawsTest {
  private static final int DRAWS = 400;
  private static final Set<String> SYMMETRIC =
      Set.of("shared_soc_from", "shared_soc_to", "crossing_1_soc", "crossing_2_soc");

  private static Session session(String name, long seed) {
    Random random = new Random(seed * 0x9e3779b97f4a7c15L);
    return ReadByHand.session(
        name, TrueCurve.random(random, 3 + 6.4 * random.nextDouble()), random);
  }

  private static PairResult compare(Session one, Session other) {
    return CurveComparison.of(
        new Courses(one, Optional.empty(), DRAWS),
        new Courses(other, Optional.empty(), DRAWS),
        other.name(),
        List.of());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
  void stretches_cover_the_window_and_agree_with_their_numbers(long seed) {
    PairResult pair = compare(session("one", seed), session("other", 1000 + seed));
    double at = pair.shared().orElseThrow().low();
    Order before = null;
    for (Stretch stretch : pair.stretches()) {
      assertThat(stretch.from()).isEqualTo(at);
      assertThat(stretch.order()).isNotEqualTo(before);
      stretch.ids().ifPresent(ids -> checkLead(pair.numbers(), stretch, ids));
      at = stretch.to();
      before = stretch.order();
    }
    assertThat(at).isEqualTo(pair.shared().orElseThrow().high());
    pair.crossings().forEach(id -> assertThat(pair.numbers().estimate(id)).isPresent());
    Curve curve = pair.difference().orElseThrow();
    assertThat(curve.size()).isLessThanOrEqualTo(402);
    for (int i = 0; i < curve.size(); i++) {
      assertThat(curve.y(i)).isBetween(curve.low(i), curve.high(i));
    }
  }

  private static void checkLead(Numbers numbers, Stretch stretch, Stretch.Ids ids) {
    assertThat(stretch.to() - stretch.from()).isGreaterThanOrEqualTo(1);
    assertThat(numbers.estimate(ids.from()).orElseThrow().value()).isEqualTo(stretch.from());
    assertThat(numbers.estimate(ids.to()).orElseThrow().value()).isEqualTo(stretch.to());
    double sign = stretch.order() == Order.AHEAD ? 1 : -1;
    assertThat(sign * numbers.estimate(ids.lead()).orElseThrow().value()).isPositive();
    assertThat(numbers.estimate(ids.gain())).isPresent();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void swapping_the_sessions_mirrors_every_result(long seed) {
    Session one = session("one", seed);
    Session other = session("other", 1000 + seed);
    PairResult pair = compare(one, other);
    PairResult swapped = compare(other, one);
    assertThat(swapped.stretches()).hasSameSizeAs(pair.stretches());
    for (int i = 0; i < pair.stretches().size(); i++) {
      Stretch here = pair.stretches().get(i);
      Stretch there = swapped.stretches().get(i);
      assertThat(there.order()).isEqualTo(mirrored(here.order()));
      assertThat(there.from()).isEqualTo(here.from());
      assertThat(there.to()).isEqualTo(here.to());
    }
    assertThat(swapped.crossings()).isEqualTo(pair.crossings());
    for (ReportNumber number : pair.numbers().all()) {
      Estimate here = number.estimate().orElseThrow();
      Estimate there = swapped.numbers().estimate(number.id()).orElseThrow();
      boolean same = SYMMETRIC.contains(number.id()) || number.id().contains("_soc_");
      assertThat(there).as(number.id()).isEqualTo(same ? here : negative(here));
    }
  }

  private static Order mirrored(Order order) {
    return switch (order) {
      case AHEAD -> Order.BEHIND;
      case BEHIND -> Order.AHEAD;
      case UNDECIDED -> Order.UNDECIDED;
    };
  }

  /** With zero minus, because records distinguish positive from negative zero. */
  private static Estimate negative(Estimate estimate) {
    return new Estimate(
        0 - estimate.value(),
        new taperbook.quantity.Interval(0 - estimate.bounds().high(), 0 - estimate.bounds().low()));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void a_session_compared_with_itself_is_undecided_throughout(long seed) {
    PairResult pair = compare(session("one", seed), session("one-again", seed));
    assertThat(pair.stretches()).hasSize(1);
    assertThat(pair.stretches().get(0).order()).isEqualTo(Order.UNDECIDED);
    assertThat(pair.crossings()).isEmpty();
    for (String id : List.of("mean_lead_shared", "time_gain_shared")) {
      Estimate estimate = pair.numbers().estimate(id).orElseThrow();
      assertThat(estimate.value()).isZero();
      // Independent draws: the two are not treated as the same session.
      assertThat(estimate.bounds().high()).as(id).isGreaterThan(0.1);
      assertThat(estimate.bounds().low())
          .isCloseTo(-estimate.bounds().high(), within(1e-9 * estimate.bounds().high()));
    }
    Curve curve = pair.difference().orElseThrow();
    for (int i = 0; i < curve.size(); i++) {
      assertThat(curve.y(i)).isZero();
      assertThat(curve.high(i)).isPositive();
    }
  }

  @Test
  void every_number_has_rows_and_names_of_both_sessions() {
    PairResult pair = compare(session("one", 3), session("other", 4));
    for (ReportNumber number : pair.numbers().all()) {
      assertThat(number.origin().session()).isEqualTo("one");
      assertThat(number.origin().against()).isEqualTo("other");
      assertThat(number.origin().rows().stream().map(r -> r.file()).distinct())
          .as(number.id())
          .containsExactlyInAnyOrder("sessions/one/readings.csv", "sessions/other/readings.csv");
    }
  }
}
