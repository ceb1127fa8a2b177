package taperbook.input.csv;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.session.InputFile;

/**
 * Workbooks of spreadsheet programs, which contain sheets, formulas and formats and are not
 * supported.
 *
 * @see <a href="https://www.iso.org/standard/71691.html">ISO/IEC 29500-1, Office Open XML</a>
 * @see <a href="https://www.iso.org/standard/66363.html">ISO/IEC 26300-1, OpenDocument</a>
 */
public final class SpreadsheetWorkbook {
  /** How to convert a workbook to a CSV file. */
  public static final String REMEDY =
      "open it in the spreadsheet program, choose Save As (or Download), type CSV UTF-8 or Text CSV"
          + " with the character set UTF-8, and save the sheet as ";

  private static final String ZIP = "PK\u0003\u0004";
  private static final String COMPOUND_FILE = "\u00d0\u00cf\u0011\u00e0\u00a1\u00b1\u001a\u00e1";
  private static final String OPEN_DOCUMENT = "application/vnd.oasis.opendocument.spreadsheet";
  private static final List<String> ENDINGS =
      List.of(".xlsx", ".xlsm", ".xls", ".ods", ".fods", ".numbers");

  /** Number of initial bytes that identify the kind of archive. */
  private static final int LOOKED_AT = 4096;

  private SpreadsheetWorkbook() {}

  /** Returns true if a file name has the extension of a workbook. */
  public static boolean isName(String name) {
    return ENDINGS.stream().anyMatch(name.toLowerCase(Locale.ROOT)::endsWith);
  }

  /** Returns the name of the CSV file for a workbook's sheet. */
  public static String csvName(String name) {
    return name.substring(0, name.lastIndexOf('.')) + ".csv";
  }

  /** Returns the kind of file if its bytes are those of a workbook or another archive. */
  static Optional<String> kind(InputFile file) {
    String head = file.decoded(StandardCharsets.ISO_8859_1);
    String begin = head.substring(0, Math.min(LOOKED_AT, head.length()));
    if (begin.startsWith(COMPOUND_FILE)) {
      return Optional.of("a workbook in the form of .xls files");
    }
    if (!begin.startsWith(ZIP)) {
      return Optional.empty();
    }
    if (begin.contains(OPEN_DOCUMENT)) {
      return Optional.of("an OpenDocument workbook, as .ods files are");
    }
    return Optional.of(
        head.contains("xl/workbook") || begin.contains("[Content_Types].xml")
            ? "an Office Open XML workbook, as .xlsx files are"
            : "a ZIP archive, as workbooks are");
  }

  /** Reports that a file is a workbook. */
  static void refuse(String kind, ProblemLog log) {
    String path = log.file();
    log.add(
        ProblemCode.WORKBOOK,
        kind + ", and no text",
        "a CSV file, which is text in UTF-8",
        REMEDY + path.substring(path.lastIndexOf('/') + 1));
  }
}
