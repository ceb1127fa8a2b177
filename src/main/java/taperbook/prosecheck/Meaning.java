package taperbook.prosecheck;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a typed figure may state.
 *
 * @param targets what it may be, the likeliest first; not empty
 * @param certain true if the words leave no doubt that it is one of them
 */
record Meaning(List<Target> targets, boolean certain) {
  Meaning {
    targets = List.copyOf(targets);
  }

  /** True if one of them agrees with an amount. */
  boolean agrees(Amount amount) {
    return targets.stream().anyMatch(t -> t.agrees(amount));
  }

  /** This for sure, if it was measured. */
  static Optional<Meaning> surely(Optional<Target> likeliest) {
    return surely(likeliest, Optional.empty());
  }

  /** One of the two for sure, if the likelier was measured. */
  static Optional<Meaning> surely(Optional<Target> likeliest, Optional<Target> other) {
    return likeliest.map(first -> new Meaning(joined(first, other), true));
  }

  /** Perhaps this. */
  static Optional<Meaning> perhaps(Optional<Target> likeliest) {
    return perhaps(likeliest, Optional.empty());
  }

  /** Perhaps one of the two. */
  static Optional<Meaning> perhaps(Optional<Target> likeliest, Optional<Target> other) {
    return likeliest.or(() -> other).map(first -> new Meaning(joined(first, other), false));
  }

  private static List<Target> joined(Target first, Optional<Target> other) {
    return Stream.concat(Stream.of(first), other.stream()).distinct().toList();
  }
}
