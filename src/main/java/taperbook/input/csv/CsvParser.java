package taperbook.input.csv;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Texts;
import taperbook.session.InputFile;

/**
 * Parses CSV according to RFC 4180, in strict UTF-8 unless another encoding is stated. Also accepts
 * a byte order mark, any line ending, commas, semicolons or tabs, blank lines, and blank cells at
 * the end of a row.
 *
 * @see <a href="https://www.rfc-editor.org/rfc/rfc4180">RFC 4180</a>
 */
public final class CsvParser {
  /** Maximum number of lines; a longer file is not a recording of one session. */
  static final int MAX_LINES = 10_000_000;

  private CsvParser() {}

  /** Returns the table, or all places where the file is malformed. */
  public static Checked<CsvTable> read(InputFile file) {
    return read(file, CsvLayout.PLAIN);
  }

  private static Checked<CsvTable> tooLong(String path, long lines, int maxLines) {
    ProblemLog log = new ProblemLog(path);
    log.add(
        ProblemCode.FILE_TOO_LARGE,
        Texts.of("input.csv_parser.lines", lines),
        Texts.of("input.csv_parser.at_most_lines", maxLines),
        Texts.of("input.common.keep_rows_of_one_session"));
    return Checked.refused(log.list());
  }

  /** Returns the table of a file with a stated layout. */
  public static Checked<CsvTable> read(InputFile file, CsvLayout layout) {
    return read(file, layout, MAX_LINES);
  }

  static Checked<CsvTable> read(InputFile file, CsvLayout layout, int maxLines) {
    return layout
        .encoding()
        .decode(file)
        .then(
            text -> {
              long lines = lineFeeds(text);
              return lines > maxLines
                  ? tooLong(file.path(), lines, maxLines)
                  : parse(file.path(), layout.withoutLeadingLines(text), layout);
            });
  }

  private static long lineFeeds(String text) {
    long count = 0;
    for (int at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) {
      count++;
    }
    return count;
  }

  private static Checked<CsvTable> parse(String path, String text, CsvLayout layout) {
    char delimiter = layout.delimiter().orElseGet(() -> DelimiterDetector.of(text));
    ProblemLog log = new ProblemLog(path);
    if (text.indexOf('"') >= 0) {
      QuoteCheck.check(text, delimiter, log);
    }
    if (log.hasErrors()) {
      return Checked.refused(log.list());
    }
    List<CsvRow> heads = new ArrayList<>();
    PackedRows body = new PackedRows(text.length());
    split(path, text, delimiter, 1 + layout.rowsOfUnits(), heads, body);
    if (body.isEmpty()) {
      return empty(heads, log);
    }
    CsvRow header = heads.get(0).withoutTrailingBlanks();
    for (CsvRow row : body) {
      if (row.size() > header.size()) {
        checkLength(header, row, delimiter, log);
      }
    }
    return log.hasErrors()
        ? Checked.refused(log.list())
        : Checked.good(new CsvTable(path, delimiter, header, body));
  }

  /** Adds the first rows that are not blank to a list, and the others to the body. */
  private static void split(
      String path,
      String text,
      char delimiter,
      int headCount,
      List<CsvRow> heads,
      PackedRows body) {
    CSVFormat format =
        CSVFormat.RFC4180.builder().setDelimiter(delimiter).setIgnoreEmptyLines(true).get();
    LineCounter lines = new LineCounter(text);
    try (CSVParser parser = format.parse(new StringReader(text))) {
      for (CSVRecord parsed : parser) {
        int line = lines.lineOfTextAt((int) parsed.getCharacterPosition());
        CsvRow row = new CsvRow(line, List.of(parsed.values()));
        if (!row.isBlank() && heads.size() < headCount) {
          heads.add(row);
        } else if (!row.isBlank()) {
          body.append(row.line(), row.cells());
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(path, e);
    }
  }

  private static Checked<CsvTable> empty(List<CsvRow> heads, ProblemLog log) {
    if (heads.isEmpty()) {
      log.add(
          ProblemCode.CSV_EMPTY,
          Texts.of("input.common.empty_file"),
          Texts.of("input.csv_parser.row_of_column_heads_and"),
          Texts.of("input.csv_parser.write_column_heads_and_rows"));
    } else {
      log.add(
          ProblemCode.CSV_EMPTY,
          heads.get(0).line(),
          0,
          Texts.of("input.csv_parser.column_heads_without_row_below"),
          Texts.of("input.csv_parser.at_least_one_row"),
          Texts.of("input.csv_parser.write_rows_or_take_file"));
    }
    return Checked.refused(log.list());
  }

  private static void checkLength(CsvRow header, CsvRow row, char delimiter, ProblemLog log) {
    int heads = header.size();
    for (int i = heads; i < row.size(); i++) {
      if (!row.isBlankAt(i)) {
        log.add(
            ProblemCode.ROW_TOO_LONG,
            row.line(),
            i + 1,
            Texts.of("input.csv_parser.in_cell", Quoted.of(row.cell(i)), i + 1),
            Texts.of("input.csv_parser.at_most_cells_as_many", heads),
            delimiter == ','
                ? Texts.of("input.csv_parser.put_cell_that_contains_comma")
                : Texts.of("input.csv_parser.put_cell_that_contains_delimiter"));
        return;
      }
    }
  }
}
