package taperbook.app.project;

import java.util.List;
import taperbook.model.InputFile;
import taperbook.model.InputTable;
import taperbook.read.CsvRow;
import taperbook.read.CsvTable;
import taperbook.read.CsvTableReader;

/** Reads the tables of sessions and range tests, to be published beside the report. */
public final class InputTables {
  private InputTables() {}

  /** The tables among some files that were checked before, each read when it is asked for. */
  public static Iterable<InputTable> of(List<InputFile> files) {
    return () ->
        files.stream()
            .filter(f -> f.path().startsWith("sessions/") && f.path().endsWith(".csv"))
            .flatMap(f -> CsvTableReader.read(f).value().map(t -> table(f, t)).stream())
            .iterator();
  }

  private static InputTable table(InputFile file, CsvTable table) {
    return new InputTable(
        file,
        table.delimiter(),
        table.header().cells(),
        table.rows().stream().map(CsvRow::cells).toList());
  }
}
