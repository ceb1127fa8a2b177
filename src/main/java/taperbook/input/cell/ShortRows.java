package taperbook.input.cell;

import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.i18n.Texts;
import taperbook.input.csv.CsvRow;
import taperbook.input.csv.CsvTable;

/**
 * Reports rows that end before their last column: a cell or a delimiter in the middle may be
 * missing.
 */
public final class ShortRows {
  private ShortRows() {}

  /** Reports each row with fewer cells than the header. */
  public static void report(CsvTable table, ProblemLog log) {
    report(table, table.header().size(), log);
  }

  /**
   * Reports each row with too few cells.
   *
   * @param needed number of the last column that each row must have
   */
  public static void report(CsvTable table, int needed, ProblemLog log) {
    for (CsvRow row : table.rows()) {
      if (row.size() < needed) {
        log.add(
            ProblemCode.ROW_TOO_SHORT,
            row.line(),
            0,
            Texts.count(row.size(), "input.short_rows.cell", "input.short_rows.cells"),
            Texts.of("input.short_rows.cells_as_header_has_last", needed),
            Texts.of("input.short_rows.leave_it_if_they_are"));
      }
    }
  }
}
