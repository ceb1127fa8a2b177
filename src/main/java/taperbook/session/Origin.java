package taperbook.session;

import java.util.List;

/**
 * Source of a number: its session and input rows.
 *
 * @param session name of the session it is about
 * @param against name of the session that this one is compared with, empty if there is none
 * @param rows the input rows that it was computed from, sorted, without duplicates
 */
public record Origin(String session, String against, List<RowRef> rows) {
  /** Sorts the rows and removes duplicates. */
  public Origin {
    rows = RowList.of(rows);
  }

  /** Creates the origin of a number that is about one session only. */
  public Origin(String session, List<RowRef> rows) {
    this(session, "", rows);
  }
}
