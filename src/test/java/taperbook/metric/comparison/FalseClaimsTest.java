package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import taperbook.metric.course.Courses;
import taperbook.metric.course.ReadByHand;
import taperbook.metric.course.TrueCurve;
import taperbook.quantity.Interval;
import taperbook.result.PairResult;
import taperbook.result.Stretch;
import taperbook.session.Session;

/**
 * How often the comparison of two sessions makes a false claim: a stretch in which the named
 * session does not take more power throughout, or a crossing interval without a true crossing.
 * Pairs of true curves in closed form, each rounded and thinned as by a person who reads a film.
 */
@Tag("slow")
final class FalseClaimsTest {
  private static final int PAIRS = 300;

  /** The nominal rate is at most one in twenty; more than this over 300 pairs is a fault. */
  private static final double MOST = 0.07;

  /** Fewer than in a report, because 1,200 sessions are sampled. */
  private static final int DRAWS = 200;

  private int falsePairs;
  private int ledPairs;
  private int crossings;
  private double ledPercents;
  private double allPercents;

  @Test
  void the_same_curve_read_twice_is_rarely_distinguished() throws IOException {
    for (int seed = 1; seed <= PAIRS; seed++) {
      Random random = new Random(seed * 0x9e3779b97f4a7c15L);
      TrueCurve curve = TrueCurve.random(random, 3 + 6.4 * random.nextDouble());
      count(curve, curve, random);
    }
    writeCounts("same");
    assertThat((double) falsePairs / PAIRS).isLessThanOrEqualTo(MOST);
  }

  @Test
  void false_leads_and_crossings_are_rare() throws IOException {
    for (int seed = 1; seed <= PAIRS; seed++) {
      Random random = new Random(seed * 0xd1342543de82ef95L);
      TrueCurve one = TrueCurve.random(random, 3 + 6.4 * random.nextDouble());
      TrueCurve other = TrueCurve.random(random, 3 + 6.4 * random.nextDouble());
      count(one, other, random);
    }
    writeCounts("two");
    assertThat((double) falsePairs / PAIRS).isLessThanOrEqualTo(MOST);
    // A comparison without any claim would also pass.
    assertThat(ledPercents / allPercents).isGreaterThan(0.75);
    assertThat(crossings).isGreaterThan(PAIRS / 5);
  }

  private void count(TrueCurve one, TrueCurve other, Random random) {
    PairResult pair =
        CurveComparison.of(
            courses(ReadByHand.session("one", one, random)),
            courses(ReadByHand.session("other", other, random)),
            "other",
            List.of());
    DoubleUnaryOperator truth = s -> one.power(s) - other.power(s);
    boolean wrong = pair.stretches().stream().anyMatch(s -> isFalse(s, truth));
    for (String id : pair.crossings()) {
      wrong |= !crosses(pair.numbers().estimate(id).orElseThrow().bounds(), truth);
      crossings++;
    }
    falsePairs += wrong ? 1 : 0;
    for (Stretch stretch : pair.stretches()) {
      double width = stretch.to() - stretch.from();
      allPercents += width;
      ledPercents += stretch.order() == Stretch.Order.UNDECIDED ? 0 : width;
    }
    ledPairs += pair.stretches().size() > 1 ? 1 : 0;
  }

  private static Courses courses(Session session) {
    return new Courses(session, Optional.empty(), DRAWS);
  }

  private static boolean isFalse(Stretch stretch, DoubleUnaryOperator truth) {
    if (stretch.order() == Stretch.Order.UNDECIDED) {
      return false;
    }
    double sign = stretch.order() == Stretch.Order.AHEAD ? 1 : -1;
    for (double s = stretch.from(); s <= stretch.to(); s += 0.01) {
      if (!(sign * truth.applyAsDouble(s) > 0)) {
        return true;
      }
    }
    return false;
  }

  private static boolean crosses(Interval interval, DoubleUnaryOperator truth) {
    return truth.applyAsDouble(interval.low()) * truth.applyAsDouble(interval.high()) <= 0;
  }

  private void writeCounts(String which) throws IOException {
    Files.createDirectories(Path.of("target"));
    Files.writeString(
        Path.of("target/false-claims-" + which + ".md"),
        String.format(
            Locale.ROOT,
            "%d of %d pairs with a false claim (%.1f %%); %d crossings; led %.1f %% of the shared"
                + " window; %d with more than one stretch%n",
            falsePairs,
            PAIRS,
            100.0 * falsePairs / PAIRS,
            crossings,
            100 * ledPercents / allPercents,
            ledPairs));
  }
}
