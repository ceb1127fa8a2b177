package taperbook.session;

import java.util.List;

/**
 * Where a number comes from.
 *
 * @param session name of the session it is about
 * @param against name of the session that this one is held against, empty if there is none
 * @param rows the rows of input that it was computed from, in order, without repeats
 */
public record Origin(String session, String against, List<RowRef> rows) {
  /** Sorts the rows and drops repeats. */
  public Origin {
    rows = RowList.of(rows);
  }

  /** The origin of a number that is about one session alone. */
  public Origin(String session, List<RowRef> rows) {
    this(session, "", rows);
  }
}
