package taperbook.input.folder;

import java.util.List;
import taperbook.diagnostics.Problem;

/**
 * What a folder holds. Problems of one entry do not hide the others, so both are given.
 *
 * @param names names of the usable entries, sorted
 * @param problems what is wrong with the rest
 */
public record Listing(List<String> names, List<Problem> problems) {
  /** Copies the lists. */
  public Listing {
    names = List.copyOf(names);
    problems = List.copyOf(problems);
  }
}
