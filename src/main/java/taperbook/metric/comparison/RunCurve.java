package taperbook.metric.comparison;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import taperbook.metric.course.Course;
import taperbook.metric.course.Courses;
import taperbook.metric.course.Draw;
import taperbook.metric.fit.SampleMean;
import taperbook.result.Curve;
import taperbook.session.Channel;
import taperbook.session.Trace;

/** The mean power of runs over the states of charge that all of them cover. */
public final class RunCurve {
  /** Points per per cent. */
  private static final int POINTS = 2;

  private static final int FEWEST_WITH_BAND = 3;

  private RunCurve() {}

  /**
   * Returns the mean curve, kW over %, with the 95 % interval of the mean at each point by
   * Student's distribution. Two runs have no interval: 12.7 standard uncertainties would fill the
   * chart.
   *
   * @param runs the courses of each run; two or more
   */
  public static Optional<Curve> of(List<Courses> runs) {
    List<Trace> charges =
        runs.stream().flatMap(r -> r.session().trace(Channel.SOC).stream()).toList();
    if (charges.size() < runs.size() || runs.stream().anyMatch(r -> !hasPower(r))) {
      return Optional.empty();
    }
    double from = charges.stream().mapToDouble(Trace::firstValue).max().orElseThrow();
    double to = charges.stream().mapToDouble(Trace::lastValue).min().orElseThrow();
    double[] grid =
        IntStream.rangeClosed((int) Math.ceil(from * POINTS), (int) Math.floor(to * POINTS))
            .mapToDouble(i -> (double) i / POINTS)
            .toArray();
    return grid.length < 2 ? Optional.empty() : Optional.of(mean(runs, grid));
  }

  private static boolean hasPower(Courses run) {
    return run.session().trace(Channel.POWER).filter(p -> p.size() > 1).isPresent();
  }

  private static Curve mean(List<Courses> runs, double[] grid) {
    List<double[]> powers = runs.stream().map(r -> powers(r, grid)).toList();
    double[] means = new double[grid.length];
    double[] low = new double[grid.length];
    double[] high = new double[grid.length];
    for (int i = 0; i < grid.length; i++) {
      int point = i;
      SampleMean mean = SampleMean.of(powers.stream().map(p -> p[point]).toList());
      double half = mean.count() < FEWEST_WITH_BAND ? 0 : mean.half95();
      means[i] = mean.value();
      low[i] = Math.max(0, means[i] - half);
      high[i] = means[i] + half;
    }
    return Curve.wrap(grid, means, low, high, new boolean[grid.length]);
  }

  /** Returns the mean power of a run's courses at each state of charge, kW. */
  private static double[] powers(Courses run, double[] grid) {
    double[] sums = new double[grid.length];
    List<Draw> draws = run.draws();
    for (Draw draw : draws) {
      Course course = draw.course();
      for (int i = 0; i < grid.length; i++) {
        sums[i] += course.powerAt(course.timeOfCharge(grid[i] + run.displayOffset()));
      }
    }
    for (int i = 0; i < grid.length; i++) {
      sums[i] /= draws.size();
    }
    return sums;
  }
}
