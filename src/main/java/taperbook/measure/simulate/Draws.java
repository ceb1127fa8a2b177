package taperbook.measure.simulate;

import java.util.Set;
import taperbook.model.UncertaintySource;

/**
 * Random draws by source. A source that is switched off gives its central value, so that the
 * contribution of each can be found alone (JCGM 101:2008, annex B).
 *
 * <p>The numbers are those of {@link java.util.SplittableRandom}, written out because they are
 * asked for millions of times in each report.
 *
 * @see <a href="https://doi.org/10.1145/2660193.2660195">Steele, Lea, Flood, OOPSLA 2014</a>
 */
@SuppressWarnings("EnumOrdinal") // An index into an array of this class, never stored.
final class Draws {
  private static final long GOLDEN_GAMMA = 0x9e3779b97f4a7c15L;
  private static final double STEP_OF_53_BITS = 0x1.0p-53;
  private static final int STREAMS = 6;

  private final boolean[] active;

  /** Where each stream but the current one stands. */
  private final long[] states = new long[STREAMS];

  private int stream;
  private long state;

  Draws(long seed, Set<UncertaintySource> active) {
    this.state = seed;
    for (int i = 1; i < STREAMS; i++) {
      states[i] = mixed(seed + i * GOLDEN_GAMMA);
    }
    // An array, as a set would cost more than the draw.
    UncertaintySource[] all = UncertaintySource.values();
    this.active = new boolean[all.length];
    for (int i = 0; i < all.length; i++) {
      this.active[i] = active.contains(all[i]);
    }
  }

  /**
   * Goes on with another stream of numbers, so that what draws from one does not depend on how much
   * was drawn from the others.
   *
   * @param wanted from 0, which is where it begins, to 5
   */
  void turnTo(int wanted) {
    states[stream] = state;
    stream = wanted;
    state = states[wanted];
  }

  /** Tells whether anything was drawn from the stream: differs after each draw. */
  long state() {
    return state;
  }

  /** True if a source is switched on. */
  boolean has(UncertaintySource source) {
    return active[source.ordinal()];
  }

  /** Rectangular from -1 to 1; 0 if the source is switched off. */
  double symmetric(UncertaintySource source) {
    return active[source.ordinal()] ? 2 * next() - 1 : 0;
  }

  /** Rectangular from 0 to 1; one half if the source is switched off. */
  double share(UncertaintySource source) {
    return active[source.ordinal()] ? next() : 0.5;
  }

  /** Rectangular between two values; their middle if the source is switched off. */
  double between(UncertaintySource source, double low, double high) {
    return low + share(source) * (high - low);
  }

  // In steps so small that the first compiler puts them in place of each call.

  private double next() {
    state += GOLDEN_GAMMA;
    return (mixed(state) >>> 11) * STEP_OF_53_BITS;
  }

  private static long mixed(long state) {
    long z = twiceMixed(onceMixed(state));
    return z ^ (z >>> 31);
  }

  private static long onceMixed(long z) {
    return (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
  }

  private static long twiceMixed(long z) {
    return (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
  }
}
