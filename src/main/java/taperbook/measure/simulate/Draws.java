package taperbook.measure.simulate;

import java.util.EnumSet;
import java.util.Set;
import java.util.SplittableRandom;
import taperbook.model.UncertaintySource;

/**
 * Random draws by source. A source that is switched off gives its central value, so that the
 * contribution of each can be found alone (JCGM 101:2008, annex B).
 */
final class Draws {
  private final SplittableRandom random;
  private final Set<UncertaintySource> active;

  Draws(long seed, Set<UncertaintySource> active) {
    this.random = new SplittableRandom(seed);
    this.active = EnumSet.copyOf(active);
  }

  /** True if a source is switched on. */
  boolean has(UncertaintySource source) {
    return active.contains(source);
  }

  /** Rectangular from -1 to 1; 0 if the source is switched off. */
  double symmetric(UncertaintySource source) {
    return active.contains(source) ? 2 * random.nextDouble() - 1 : 0;
  }

  /** Rectangular from 0 to 1; one half if the source is switched off. */
  double share(UncertaintySource source) {
    return active.contains(source) ? random.nextDouble() : 0.5;
  }

  /** Rectangular between two values; their middle if the source is switched off. */
  double between(UncertaintySource source, double low, double high) {
    return low + share(source) * (high - low);
  }
}
