package taperbook.result;

import java.util.List;

/**
 * A folder of {@code sessions/} that a library leaves out because its files have errors.
 *
 * @param name name of the folder
 * @param kind its content: {@code session} or {@code range test}
 * @param reasons the errors, a sentence each with file and line; not empty
 * @param more number of further errors
 */
public record LeftOut(String name, String kind, List<String> reasons, int more) {
  public LeftOut {
    reasons = List.copyOf(reasons);
    if (reasons.isEmpty() || more < 0) {
      throw new IllegalArgumentException(name + " is left out for a reason");
    }
  }
}
