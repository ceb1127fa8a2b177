package taperbook.output.view;

import java.util.List;
import java.util.Map;

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
    static Cell text(Object text) {
      return new Cell(String.valueOf(text), "");
    }

    /** Returns the cell of a number from {@link NumberViews}. */
    static Cell of(Object view) {
      return of(view, "value", "range");
    }

    /** Returns the cell of a number from {@link NumberTable}: without its unit. */
    static Cell shown(Object view) {
      return of(view, "shown", "ends");
    }

    private static Cell of(Object view, String value, String range) {
      Map<?, ?> number = (Map<?, ?>) view;
      boolean measured = Boolean.TRUE.equals(number.get("measured"));
      if (Boolean.TRUE.equals(number.get("present")) && !measured) {
        return text("withheld");
      }
      Object ends = number.get(range);
      Object shown = measured ? number.get(value) : number.get("value");
      return new Cell(String.valueOf(shown), ends == null ? "" : ends.toString());
    }
  }
}
