package taperbook.result;

import java.util.List;

/**
 * A folder of {@code sessions/} that could not be taken into a library, since its files were
 * refused.
 *
 * @param name name of the folder
 * @param kind what it holds: {@code session} or {@code range test}
 * @param reasons what is wrong with it, a sentence each with file and line; not empty
 * @param more how many further reasons there are
 */
public record LeftOut(String name, String kind, List<String> reasons, int more) {
  /** Copies the reasons. */
  public LeftOut {
    reasons = List.copyOf(reasons);
    if (reasons.isEmpty() || more < 0) {
      throw new IllegalArgumentException(name + " is left out for a reason");
    }
  }
}
