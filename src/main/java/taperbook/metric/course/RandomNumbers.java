package taperbook.metric.course;

/**
 * Generates uniform, normal, gamma and beta random numbers from a seed, identical on every machine.
 *
 * <p>Uniform numbers are those of {@link java.util.SplittableRandom} (Steele, Lea, Flood, OOPSLA
 * 2014). Normal numbers invert the distribution function by linear interpolation of a table
 * computed with Wichura's algorithm AS 241; gamma numbers use the method of Marsaglia and Tsang
 * (ACM TOMS 26 (2000) 363).
 */
public final class RandomNumbers {
  private static final long GOLDEN_GAMMA = 0x9e3779b97f4a7c15L;
  private static final double STEP_OF_53_BITS = 0x1.0p-53;
  private static final int CELLS = 4096;
  private static final double[] NODES = nodes();

  private long state;

  /** Creates a generator that depends only on the seed. */
  public RandomNumbers(long seed) {
    this.state = seed;
  }

  /** Returns a uniform number in the open interval from 0 to 1. */
  double uniform() {
    return ((next() >>> 11) + 0.5) * STEP_OF_53_BITS;
  }

  private long next() {
    state += GOLDEN_GAMMA;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
    z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
    return z ^ (z >>> 31);
  }

  /** Returns a standard normal number. */
  public double normal() {
    double place = uniform() * CELLS;
    int cell = (int) place;
    // Near the ends the curvature is too high for linear interpolation.
    if (cell < 8 || cell >= CELLS - 8) {
      return quantile(place / CELLS);
    }
    double low = NODES[cell];
    return low + (place - cell) * (NODES[cell + 1] - low);
  }

  private static double[] nodes() {
    double[] nodes = new double[CELLS + 1];
    for (int i = 1; i < CELLS; i++) {
      nodes[i] = quantile((double) i / CELLS);
    }
    nodes[0] = quantile(0.25 / CELLS);
    nodes[CELLS] = -nodes[0];
    return nodes;
  }

  /**
   * Returns the quantile of the standard normal distribution.
   *
   * @see <a href="https://doi.org/10.2307/2347330">Wichura, Applied Statistics 37 (1988) 477,
   *     algorithm AS 241, PPND7</a>
   */
  public static double quantile(double p) {
    double q = p - 0.5;
    if (Math.abs(q) <= 0.425) {
      double r = 0.180625 - q * q;
      return q
          * (((59.109374720 * r + 159.29113202) * r + 50.434271938) * r + 3.3871327179)
          / (((67.187563600 * r + 78.757757664) * r + 17.895169469) * r + 1);
    }
    double r = StrictMath.sqrt(-StrictMath.log(q < 0 ? p : 1 - p));
    double value;
    if (r <= 5) {
      r -= 1.6;
      value =
          (((0.17023821103 * r + 1.3067284816) * r + 2.7568153900) * r + 1.4234372777)
              / ((0.12021132975 * r + 0.73700164250) * r + 1);
    } else {
      r -= 5;
      value =
          (((0.017337203997 * r + 0.42868294337) * r + 3.0812263860) * r + 6.6579051150)
              / ((0.012258202635 * r + 0.24197894225) * r + 1);
    }
    return q < 0 ? -value : value;
  }

  /** Returns a gamma number with a shape above 1/3 and scale 1. */
  double gamma(double shape) {
    if (shape < 1) {
      return gamma(shape + 1) * StrictMath.pow(uniform(), 1 / shape);
    }
    double d = shape - 1.0 / 3;
    double c = 1 / StrictMath.sqrt(9 * d);
    while (true) {
      double x = normal();
      double v = 1 + c * x;
      v = v * v * v;
      if (v <= 0) {
        continue;
      }
      double u = uniform();
      double squared = x * x;
      if (u < 1 - 0.0331 * squared * squared
          || StrictMath.log(u) < 0.5 * squared + d * (1 - v + StrictMath.log(v))) {
        return d * v;
      }
    }
  }

  /** Returns a beta number with two shapes. */
  double beta(double a, double b) {
    double one = gamma(a);
    return one / (one + gamma(b));
  }
}
