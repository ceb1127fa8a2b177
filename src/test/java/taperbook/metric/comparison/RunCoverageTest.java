package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.session.Origin;

/**
 * How often intervals contain mean and next run, and how often equal cars are ranked: groups of
 * runs with a known spread between runs and a known reading error, by the JDK's generator. The
 * table is written to {@code target/runs.md}.
 */
@Tag("slow")
final class RunCoverageTest {
  private static final int GROUPS = 20_000;
  private static final double MEAN = 1300;
  private static final double READING = 8;

  @Test
  void intervals_contain_means_and_next_runs_and_equal_cars_are_not_ranked() throws IOException {
    StringBuilder table =
        new StringBuilder(
            "| runs | tau / u | mean inside | next run inside | equal cars ordered | without repeats"
                + " |\n|---|---|---|---|---|---|\n");
    for (int n : new int[] {2, 3, 5}) {
      for (double ratio : new double[] {0, 0.5, 1, 3, 10}) {
        Count count = new Count(n, ratio * READING, new Random(71L * n + Math.round(10 * ratio)));
        table.append(count.row(ratio));
        assertThat(count.mean()).as("mean " + n + " " + ratio).isBetween(0.93, 0.97);
        assertThat(count.next()).as("next " + n + " " + ratio).isBetween(0.93, 0.97);
        assertThat(count.ordered()).as("ordered " + n + " " + ratio).isLessThanOrEqualTo(0.055);
      }
    }
    Files.createDirectories(Path.of("target"));
    Files.writeString(Path.of("target/runs.md"), table);
  }

  /** Shares among many groups of one kind. */
  private static final class Count {
    private final int n;
    private final double tau;
    private final Random random;
    private int means;
    private int nexts;
    private int falseOrders;
    private int singleOrders;

    Count(int n, double tau, Random random) {
      this.n = n;
      this.tau = tau;
      this.random = random;
      for (int k = 0; k < GROUPS; k++) {
        group();
      }
    }

    private double run() {
      return MEAN + Math.hypot(tau, READING) * random.nextGaussian();
    }

    private void group() {
      List<Double> values = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        values.add(run());
      }
      RunStatistics runs = new RunStatistics(values, Collections.nCopies(n, READING), 0, 0);
      means += runs.meanOfAll().bounds().contains(MEAN) ? 1 : 0;
      nexts += runs.nextRun().bounds().contains(run()) ? 1 : 0;
      ReportNumber reported = number(values.get(0));
      ReportNumber other = number(run());
      double beyond = Math.sqrt(2) * runs.halfBeyondReadings();
      falseOrders += reported.differsSignificantly(other, beyond) ? 1 : 0;
      singleOrders += reported.differsSignificantly(other) ? 1 : 0;
    }

    double mean() {
      return (double) means / GROUPS;
    }

    double next() {
      return (double) nexts / GROUPS;
    }

    double ordered() {
      return (double) falseOrders / GROUPS;
    }

    String row(double ratio) {
      return String.format(
          Locale.ROOT,
          "| %d | %.1f | %.1f %% | %.1f %% | %.1f %% | %.1f %% |%n",
          n,
          ratio,
          100 * mean(),
          100 * next(),
          100 * ordered(),
          100.0 * singleOrders / GROUPS);
    }
  }

  private static ReportNumber number(double value) {
    double half = 1.959963984540054 * READING;
    Estimate estimate = new Estimate(value, Interval.around(value, half));
    return new ReportNumber(
        Metric.charging("time", "Time", Unit.SECOND, Method.RECORDED_TIME),
        new Outcome.Measured(estimate, 0.95),
        new Origin("session", List.of()),
        List.of());
  }
}
