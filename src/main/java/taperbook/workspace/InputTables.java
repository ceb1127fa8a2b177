package taperbook.workspace;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import taperbook.input.csv.CsvLayout;
import taperbook.input.csv.CsvParser;
import taperbook.input.csv.CsvRow;
import taperbook.input.csv.CsvTable;
import taperbook.session.InputFile;
import taperbook.session.InputTable;

/** Reads the tables of sessions and range tests that are published with the report. */
public final class InputTables {
  private InputTables() {}

  /** Returns the tables among files that were already checked; each is read on demand. */
  public static Iterable<InputTable> of(List<InputFile> files) {
    return () ->
        files.stream()
            .filter(f -> f.path().startsWith("sessions/") && f.path().endsWith(".csv"))
            .flatMap(f -> table(f, InputRows.layout(f, files)).stream())
            .iterator();
  }

  /**
   * Returns the table, unless it has lines above its header or units below it, which the output
   * format cannot express.
   */
  private static Optional<InputTable> table(InputFile file, CsvLayout layout) {
    return layout.leadingLines() + layout.rowsOfUnits() > 0
        ? Optional.empty()
        : CsvParser.read(file, layout).value().map(table -> table(file, layout, table));
  }

  private static InputTable table(InputFile file, CsvLayout layout, CsvTable table) {
    return new InputTable(
        file,
        layout.encoding().words().toLowerCase(Locale.ROOT),
        table.delimiter(),
        table.header().cells(),
        () -> table.rows().stream().map(CsvRow::cells));
  }
}
