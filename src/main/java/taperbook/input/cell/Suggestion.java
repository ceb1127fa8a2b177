package taperbook.input.cell;

import java.util.Collection;
import java.util.Optional;
import taperbook.diagnostics.EditDistance;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Texts;

/** Finds the most likely intended name by {@link EditDistance}. */
public final class Suggestion {
  private Suggestion() {}

  /**
   * Returns the nearest known name, ignoring case, if its distance is at most 2 edits or a third of
   * its length, and less than its length; the first of equally near names.
   */
  public static Optional<String> of(String written, Collection<String> known) {
    String label = NormalizedName.of(written);
    Optional<String> best = Optional.empty();
    int min = Integer.MAX_VALUE;
    for (String name : known) {
      int max = Math.min(Math.max(2, name.length() / 3), name.length() - 1);
      // The distance is at least the difference of the lengths; this avoids large tables for long
      // texts.
      boolean near = Math.abs(label.length() - NormalizedName.of(name).length()) <= max;
      int distance =
          near ? EditDistance.between(label, NormalizedName.of(name)) : Integer.MAX_VALUE;
      if (distance <= max && distance < min) {
        best = Optional.of(name);
        min = distance;
      }
    }
    return best;
  }

  /** Returns the remedy of writing the suggested name, or another one if there is none. */
  public static String remedy(String written, Collection<String> known, String otherwise) {
    return of(written, known)
        .map(name -> Texts.of("input.common.write", Quoted.of(name)))
        .orElse(otherwise);
  }
}
