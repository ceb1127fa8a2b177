package taperbook.metric;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import taperbook.metric.course.Displays;
import taperbook.metric.course.TrueSession;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.result.Numbers;
import taperbook.result.PairResult;
import taperbook.result.ReportResult;
import taperbook.session.DisplayRounding;
import taperbook.session.RowsWritten;

/** How often intervals contain the true differences of two sessions. */
@Tag("slow")
final class PairMetricsTest {
  private static final int PAIRS = 60;

  /** Expected is one in twenty; with 60 pairs up to six are within chance (binomial, 97.5 %). */
  private static final int MOST_OUTSIDE = 6;

  private static final List<DisplayRounding> ROUNDINGS =
      List.of(DisplayRounding.NEAREST, DisplayRounding.DOWN, DisplayRounding.UP);

  private static final List<RowsWritten> HABITS =
      List.of(RowsWritten.AT_CHANGES, RowsWritten.AT_SET_TIMES, RowsWritten.MIXED);

  private static final ReportPlan PLAN = Sessions.plan(List.of(new SocWindow(20, 70)), List.of());

  @Test
  void intervals_contain_true_differences_as_often_as_stated() {
    Map<String, Integer> outside = new TreeMap<>();
    double widest =
        IntStream.rangeClosed(1, PAIRS)
            .parallel()
            .mapToDouble(seed -> judge(seed, outside))
            .average()
            .orElseThrow();
    assertThat(outside).hasSize(2);
    outside.forEach(
        (what, count) ->
            assertThat(count).as(what + " of " + outside).isLessThanOrEqualTo(MOST_OUTSIDE));
    // An interval of minutes would contain every difference and be uninformative.
    assertThat(widest).isLessThan(90);
  }

  /**
   * Counts the numbers of a pair that miss the true value; returns the width of the time's
   * interval, s.
   */
  private static double judge(int seed, Map<String, Integer> outside) {
    Random random = new Random(seed * 0x9e3779b97f4a7c15L + 97);
    DisplayRounding rounding = ROUNDINGS.get(random.nextInt(ROUNDINGS.size()));
    RowsWritten written = HABITS.get(random.nextInt(HABITS.size()));
    Displays.Way way = new Displays.Way(rounding, written, 1, true);
    TrueSession one = TrueSession.of(random, 3 + 12 * random.nextDouble(), 84);
    TrueSession other = TrueSession.of(random, 3 + 12 * random.nextDouble(), 84);
    ReportResult result =
        ReportMetrics.measure(
            PLAN,
            Displays.byHand(one, way, 18 + random.nextInt(16), random),
            List.of(Displays.byHand(other, way, 18 + random.nextInt(16), random)),
            List.of());
    SocWindow window = result.common().shared().orElseThrow();
    // A display first shows a value this much before the charge reaches it.
    double from = window.from() - Displays.above(rounding);
    double to = window.to() - Displays.above(rounding);
    double seconds = time(one, from, to) - time(other, from, to);
    double kilowatts = power(one, from, to) - power(other, from, to);
    Numbers numbers = result.pairs().get(0).numbers();
    Estimate time = numbers.estimate(id("time_soc_", window)).orElseThrow();
    Estimate power = numbers.estimate(id("average_power_", window)).orElseThrow();
    synchronized (outside) {
      outside.merge("time", time.bounds().contains(seconds) ? 0 : 1, Integer::sum);
      outside.merge("power", power.bounds().contains(kilowatts) ? 0 : 1, Integer::sum);
    }
    return time.bounds().width();
  }

  private static String id(String stem, SocWindow window) {
    return PairResult.differenceId(stem + window.idPart());
  }

  private static double time(TrueSession truth, double from, double to) {
    return truth.timeOf(to) - truth.timeOf(from);
  }

  private static double power(TrueSession truth, double from, double to) {
    double kilowattHours = truth.energy(truth.timeOf(to)) - truth.energy(truth.timeOf(from));
    return kilowattHours * 3600 / time(truth, from, to);
  }
}
