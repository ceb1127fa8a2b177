package taperbook.output.view;

import java.util.List;

/**
 * A table of the report as an article can print it.
 *
 * @param head column headings
 * @param rows its rows, with as many cells each; may be empty
 */
public record ArticleTable(List<String> head, List<List<Cell>> rows) {
  public ArticleTable {
    head = List.copyOf(head);
    rows = rows.stream().map(List::copyOf).toList();
  }

  /**
   * A cell.
   *
   * @param value a value with its unit, or a text
   * @param range the interval of the value, or empty
   */
  public record Cell(String value, String range) {
    /** An empty cell. */
    static final Cell DASH = text("\u2013");

    static Cell text(String text) {
      return new Cell(text, "");
    }

    /** Returns the cell of a number. */
    static Cell of(NumberView number) {
      return of(number, number.amount().value(), number.amount().range());
    }

    /** Returns the cell of a number of a table: without its unit. */
    static Cell of(NumberTable.Cell cell) {
      return of(cell.number(), cell.shown().shown(), cell.shown().ends());
    }

    private static Cell of(NumberView number, String value, String range) {
      if (number.measured()) {
        return new Cell(value, range);
      }
      return number.present() ? text("withheld") : DASH;
    }
  }
}
