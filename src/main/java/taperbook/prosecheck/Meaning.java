package taperbook.prosecheck;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Possible references of a typed figure.
 *
 * @param targets candidates, most likely first; not empty
 * @param certain true if the words leave no doubt that one of the candidates is meant
 */
record Meaning(List<Target> targets, boolean certain) {
  Meaning {
    targets = List.copyOf(targets);
  }

  /** Returns true if one of the candidates agrees with an amount. */
  boolean agrees(Amount amount) {
    return targets.stream().anyMatch(t -> t.agrees(amount));
  }

  /** Returns a certain meaning if the target was measured. */
  static Optional<Meaning> surely(Optional<Target> likeliest) {
    return surely(likeliest, Optional.empty());
  }

  /** Returns a certain meaning with both targets if the more likely one was measured. */
  static Optional<Meaning> surely(Optional<Target> likeliest, Optional<Target> other) {
    return likeliest.map(first -> new Meaning(joined(first, other), true));
  }

  /** Returns an uncertain meaning. */
  static Optional<Meaning> perhaps(Optional<Target> likeliest) {
    return perhaps(likeliest, Optional.empty());
  }

  /** Returns an uncertain meaning with both targets. */
  static Optional<Meaning> perhaps(Optional<Target> likeliest, Optional<Target> other) {
    return likeliest.or(() -> other).map(first -> new Meaning(joined(first, other), false));
  }

  private static List<Target> joined(Target first, Optional<Target> other) {
    return Stream.concat(Stream.of(first), other.stream()).distinct().toList();
  }
}
