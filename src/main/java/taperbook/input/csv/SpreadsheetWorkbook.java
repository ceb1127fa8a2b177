package taperbook.input.csv;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.i18n.Texts;
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
      Texts.of("input.spreadsheet_workbook.open_it_in_spreadsheet_program");

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
      return Optional.of(Texts.of("input.spreadsheet_workbook.workbook_in_form_of_xls"));
    }
    if (!begin.startsWith(ZIP)) {
      return Optional.empty();
    }
    if (begin.contains(OPEN_DOCUMENT)) {
      return Optional.of(Texts.of("input.spreadsheet_workbook.opendocument_workbook_as_ods_files"));
    }
    return Optional.of(
        head.contains("xl/workbook") || begin.contains("[Content_Types].xml")
            ? Texts.of("input.spreadsheet_workbook.office_open_xml_workbook_as")
            : Texts.of("input.spreadsheet_workbook.zip_archive_as_workbooks_are"));
  }

  /** Reports that a file is a workbook. */
  static void refuse(String kind, ProblemLog log) {
    String path = log.file();
    log.add(
        ProblemCode.WORKBOOK,
        Texts.of("input.spreadsheet_workbook.and_no_text", kind),
        Texts.of("input.spreadsheet_workbook.csv_file_which_is_text"),
        REMEDY + path.substring(path.lastIndexOf('/') + 1));
  }
}
