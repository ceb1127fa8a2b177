package taperbook.verify;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import taperbook.quantity.Estimate;

/**
 * One number in several draws of the same version.
 *
 * @param each the number in each draw; empty where it has no value
 */
record ResampledNumber(List<Optional<Estimate>> each) {
  /** A relative difference below this is caused by floating-point evaluation, not by a change. */
  private static final double EQUAL = 1e-9;

  private static final List<ToDoubleFunction<Estimate>> PARTS =
      List.of(Estimate::value, e -> e.bounds().low(), e -> e.bounds().high());

  ResampledNumber {
    each = List.copyOf(each);
  }

  private boolean isAlwaysPresent() {
    return each.stream().allMatch(Optional::isPresent);
  }

  private boolean isNeverPresent() {
    return each.stream().allMatch(Optional::isEmpty);
  }

  /** Returns true if one has a value in every draw, and the other in none. */
  boolean wasAddedOrRemoved(ResampledNumber other) {
    return (isAlwaysPresent() && other.isNeverPresent())
        || (isNeverPresent() && other.isAlwaysPresent());
  }

  /**
   * Returns true if the draws of the two do not overlap, for a part that differs by at least a
   * share of half the interval.
   *
   * <p>With five draws on either side one number in 126 does so by chance (the number of ways to
   * choose 5 of 10 is 252).
   *
   * @param valueShare the minimum move of a value
   * @param endShare the minimum move of an end of the interval
   */
  boolean isApart(ResampledNumber other, double valueShare, double endShare) {
    if (!isAlwaysPresent() || !other.isAlwaysPresent()) {
      return wasAddedOrRemoved(other);
    }
    for (ToDoubleFunction<Estimate> part : PARTS) {
      double[] own = sorted(part);
      double[] others = other.sorted(part);
      double share = PARTS.indexOf(part) == 0 ? valueShare : endShare;
      double min = Math.max(share * half(other), EQUAL * Math.abs(part(part)));
      if (Math.abs(part(part) - other.part(part)) > min && areDisjoint(own, others)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Returns the distance between the means of the two, in value or in an end; infinite if one was
   * added or removed.
   */
  double distance(ResampledNumber other) {
    if (!isAlwaysPresent() || !other.isAlwaysPresent()) {
      return wasAddedOrRemoved(other) ? Double.POSITIVE_INFINITY : 0;
    }
    return PARTS.stream().mapToDouble(p -> Math.abs(mean(p) - other.mean(p))).max().orElse(0);
  }

  private double mean(ToDoubleFunction<Estimate> part) {
    return Arrays.stream(sorted(part)).average().orElse(0);
  }

  /** Returns the part as printed. */
  private double part(ToDoubleFunction<Estimate> part) {
    return each.get(0).map(part::applyAsDouble).orElse(0.0);
  }

  /** Returns half the wider of the two printed intervals. */
  private double half(ResampledNumber other) {
    return Stream.of(each.get(0), other.each.get(0))
        .flatMap(Optional::stream)
        .mapToDouble(e -> e.bounds().width() / 2)
        .max()
        .orElse(0);
  }

  private double[] sorted(ToDoubleFunction<Estimate> part) {
    return each.stream().flatMap(Optional::stream).mapToDouble(part).sorted().toArray();
  }

  /** A number with a single draw must lie outside the other's draws by as much as their spread. */
  private static boolean areDisjoint(double[] own, double[] others) {
    boolean once = own.length == 1 || others.length == 1;
    double margin = once ? spread(own) + spread(others) : 0;
    return own[own.length - 1] + margin < others[0] || others[others.length - 1] + margin < own[0];
  }

  private static double spread(double[] sorted) {
    return sorted[sorted.length - 1] - sorted[0];
  }
}
