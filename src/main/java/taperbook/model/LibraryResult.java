package taperbook.model;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * All that was measured for a library.
 *
 * @param plan what it should show
 * @param rows its sessions, by vehicle, then date, then name
 * @param leftOut what could not be taken in, by name
 */
public record LibraryResult(LibraryPlan plan, List<LibraryRow> rows, List<LeftOut> leftOut) {
  private static final Comparator<LibraryRow> ORDER =
      Comparator.comparing((LibraryRow r) -> r.about().vehicle())
          .thenComparing(r -> r.about().date().orElse(""))
          .thenComparing(LibraryRow::session);

  /** Sorts the rows. */
  public LibraryResult {
    rows = rows.stream().sorted(ORDER).toList();
    leftOut = List.copyOf(leftOut);
  }

  /** The row of a session, if it has one. */
  public Optional<LibraryRow> row(String session) {
    return rows.stream().filter(r -> r.session().equals(session)).findFirst();
  }
}
