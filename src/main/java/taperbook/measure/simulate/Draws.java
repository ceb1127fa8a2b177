package taperbook.measure.simulate;

import java.util.Set;
import java.util.SplittableRandom;
import taperbook.model.UncertaintySource;

/**
 * Random draws by source. A source that is switched off gives its central value, so that the
 * contribution of each can be found alone (JCGM 101:2008, annex B).
 */
@SuppressWarnings("EnumOrdinal") // An index into an array of this class, never stored.
final class Draws {
  private final SplittableRandom random;
  private final boolean[] active;

  Draws(long seed, Set<UncertaintySource> active) {
    this.random = new SplittableRandom(seed);
    // Asked millions of times: an array, as a set would cost more than the draw.
    UncertaintySource[] all = UncertaintySource.values();
    this.active = new boolean[all.length];
    for (int i = 0; i < all.length; i++) {
      this.active[i] = active.contains(all[i]);
    }
  }

  /** True if a source is switched on. */
  boolean has(UncertaintySource source) {
    return active[source.ordinal()];
  }

  /** Rectangular from -1 to 1; 0 if the source is switched off. */
  double symmetric(UncertaintySource source) {
    return active[source.ordinal()] ? 2 * random.nextDouble() - 1 : 0;
  }

  /** Rectangular from 0 to 1; one half if the source is switched off. */
  double share(UncertaintySource source) {
    return active[source.ordinal()] ? random.nextDouble() : 0.5;
  }

  /** Rectangular between two values; their middle if the source is switched off. */
  double between(UncertaintySource source, double low, double high) {
    return low + share(source) * (high - low);
  }
}
