package taperbook.metric.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.result.Numbers;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.Session;

/**
 * A charge logged at 10 Hz, and every 10th and 100th of its rows, with an exact solution: 90 kW
 * from 10 % to 40 %, and from there a fall that is linear over the charge, to 36 kW at 80 %. For a
 * battery of C kWh and a slope of k kW per 1 %:
 *
 * <pre>
 *   s(t) = 40 + (90 / k) (1 - exp(-100 k t / (3600 C)))   [%, t in s from 40 %]
 * </pre>
 */
@Tag("slow")
final class ThinnedRowsTest {
  private static final double CAPACITY = 60;
  private static final double PEAK = 90;
  private static final double SLOPE = (90 - 36) / 40.0;
  private static final double SECONDS_TO_40 = 30 * CAPACITY / 100 / PEAK * 3600;
  private static final double HERTZ = 10;

  /** Time of the last row, which is also the last one of every 100th. */
  private static final double LAST = Math.floor(second(80) / 10) * 10;

  private static final int FROM = 20;
  private static final int TO = 70;

  /** Half the step of the logger's state of charge, %. */
  private static final double HALF = 0.005;

  @Test
  void all_rows_and_a_hundredth_of_them_give_the_same_numbers_and_the_truth() {
    // A display that rounds to nearest first shows a figure half a step below it.
    double seconds = second(TO - HALF) - second(FROM - HALF);
    double energy = (TO - FROM) * CAPACITY / 100;
    Map<String, Double> truth =
        Map.of(
            "time_soc_20_70", seconds,
            "energy_soc_20_70", energy,
            "average_power_20_70", energy / seconds * 3600,
            "energy_added", (soc(LAST) - 10) * CAPACITY / 100,
            "peak_power", PEAK);
    Numbers all = measure(1);
    for (int every : new int[] {10, 100}) {
      Numbers some = measure(every);
      truth.forEach(
          (id, exact) -> {
            Estimate dense = all.estimate(id).orElseThrow();
            Estimate thin = some.estimate(id).orElseThrow();
            String where = id + " of every " + every + ": " + thin + ", of all: " + dense;
            assertThat(dense.bounds().contains(exact)).as(where).isTrue();
            assertThat(thin.bounds().contains(exact)).as(where).isTrue();
            // Not the reverse: an interval of all rows is several times narrower.
            assertThat(thin.bounds().contains(dense.value())).as(where).isTrue();
          });
    }
  }

  private static Numbers measure(int every) {
    int rows = (int) Math.round(LAST * HERTZ) / every + 1;
    double[] seconds = IntStream.range(0, rows).mapToDouble(i -> i * every / HERTZ).toArray();
    double[] soc = Arrays.stream(seconds).map(ThinnedRowsTest::soc).toArray();
    Session session =
        Sessions.session()
            .text(ConditionItem.READ_FROM, "log")
            .text(ConditionItem.DISPLAY_ROUNDS, "nearest")
            .clockHalfStep(0.0005)
            .channel(Channel.SOC, HALF, seconds, displayed(soc, 2 * HALF, s -> s))
            .channel(
                Channel.POWER,
                0.05,
                seconds,
                displayed(soc, 0.1, s -> PEAK - SLOPE * Math.max(0, s - 40)))
            .channel(
                Channel.ENERGY_ADDED,
                0.0005,
                seconds,
                displayed(soc, 0.001, s -> (s - 10) * CAPACITY / 100))
            .build();
    return Sessions.measure(session, new SocWindow(FROM, TO)).main().numbers();
  }

  private static double[] displayed(double[] soc, double step, DoubleUnaryOperator quantity) {
    return Arrays.stream(soc).map(quantity).map(v -> Math.rint(v / step) * step).toArray();
  }

  private static double soc(double second) {
    double after = second - SECONDS_TO_40;
    return after <= 0
        ? 10 + second * PEAK / 3600 / CAPACITY * 100
        : 40 + PEAK / SLOPE * (1 - Math.exp(-100 * SLOPE * after / (3600 * CAPACITY)));
  }

  private static double second(double soc) {
    return soc <= 40
        ? (soc - 10) * CAPACITY / 100 / PEAK * 3600
        : SECONDS_TO_40
            + 3600 * CAPACITY / (100 * SLOPE) * Math.log(PEAK / (PEAK - SLOPE * (soc - 40)));
  }
}
