package taperbook.input.folder;

import java.util.List;
import taperbook.diagnostics.Problem;

/**
 * The entries of a folder. Problems of one entry do not hide the others, so both are returned.
 *
 * @param names names of the valid entries, sorted
 * @param problems the problems of the other entries
 */
public record Listing(List<String> names, List<Problem> problems) {
  public Listing {
    names = List.copyOf(names);
    problems = List.copyOf(problems);
  }
}
