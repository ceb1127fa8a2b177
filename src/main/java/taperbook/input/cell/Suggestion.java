package taperbook.input.cell;

import java.util.Collection;
import java.util.Optional;
import taperbook.diagnostics.EditDistance;

/** Finds the name that was most likely meant, by {@link EditDistance}. */
public final class Suggestion {
  private Suggestion() {}

  /**
   * The nearest of the known names, letter case aside, if it is at most 2 edits or a third of its
   * length away, and fewer edits than it has letters; of equals the first.
   */
  public static Optional<String> of(String written, Collection<String> known) {
    String label = NormalizedName.of(written);
    Optional<String> best = Optional.empty();
    int least = Integer.MAX_VALUE;
    for (String name : known) {
      int most = Math.min(Math.max(2, name.length() / 3), name.length() - 1);
      // At least as many edits as the lengths differ by; this keeps long texts out of the table.
      boolean near = Math.abs(label.length() - NormalizedName.of(name).length()) <= most;
      int distance =
          near ? EditDistance.between(label, NormalizedName.of(name)) : Integer.MAX_VALUE;
      if (distance <= most && distance < least) {
        best = Optional.of(name);
        least = distance;
      }
    }
    return best;
  }
}
