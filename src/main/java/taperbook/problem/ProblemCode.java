package taperbook.problem;

import java.util.Locale;

/** Every kind of problem that input can have. The slug is stable: it is printed and documented. */
public enum ProblemCode {
  /** A file or folder that is needed is not there. */
  FILE_MISSING(Severity.ERROR),
  /** A file cannot be read. */
  FILE_UNREADABLE(Severity.ERROR),
  /** A file is larger than is read. */
  FILE_TOO_LARGE(Severity.ERROR),
  /** A file or folder name has characters that are not used in names. */
  NAME_NOT_ALLOWED(Severity.ERROR),
  /** A file holds bytes that are not UTF-8. */
  TEXT_NOT_UTF8(Severity.ERROR),
  /** A CSV file breaks the rules of quoting. */
  CSV_BROKEN(Severity.ERROR),
  /** A CSV file has no header or no rows. */
  CSV_EMPTY(Severity.ERROR),
  /** A row has more cells than the header. */
  ROW_TOO_LONG(Severity.ERROR),
  /** A column head has no unit. */
  COLUMN_WITHOUT_UNIT(Severity.ERROR),
  /** A column head has a unit that its quantity does not take. */
  COLUMN_UNIT_UNKNOWN(Severity.ERROR),
  /** Two columns have the same meaning. */
  COLUMN_TWICE(Severity.ERROR),
  /** A column that is needed is not there. */
  COLUMN_MISSING(Severity.ERROR),
  /** A column whose name is not known; it is kept and ignored. */
  COLUMN_IGNORED(Severity.NOTICE),
  /** A cell that should hold a number holds something else. */
  CELL_NOT_A_NUMBER(Severity.ERROR),
  /** A cell that should hold a time holds something else. */
  CELL_NOT_A_TIME(Severity.ERROR),
  /** A number lies outside what its quantity can be. */
  CELL_OUT_OF_RANGE(Severity.ERROR),
  /** A row has readings but no time. */
  TIME_MISSING(Severity.ERROR),
  /** Time goes back. */
  TIME_GOES_BACK(Severity.ERROR),
  /** State of charge falls during charging. */
  SOC_FALLS(Severity.NOTICE),
  /** The energy counter falls during charging. */
  ENERGY_FALLS(Severity.ERROR),
  /** There are too few readings to measure anything. */
  TOO_FEW_READINGS(Severity.ERROR),
  /** An item whose name is not known. */
  ITEM_UNKNOWN(Severity.ERROR),
  /** A required item is not there. */
  ITEM_MISSING(Severity.ERROR),
  /** An item stands there twice. */
  ITEM_TWICE(Severity.ERROR),
  /** An item's value does not have the form that the item takes. */
  VALUE_NOT_UNDERSTOOD(Severity.ERROR),
  /** An item's value lies outside what it can be. */
  VALUE_OUT_OF_RANGE(Severity.ERROR),
  /** An item's unit is missing or not one that the item takes. */
  UNIT_NOT_UNDERSTOOD(Severity.ERROR),
  /** An item's {@code how known} cell is not one of the words it takes. */
  HOW_KNOWN_NOT_UNDERSTOOD(Severity.ERROR),
  /** A value and the word {@code unknown} contradict each other. */
  KNOWN_CONTRADICTION(Severity.ERROR),
  /** Facts contradict each other. */
  FACTS_CONTRADICT(Severity.ERROR),
  /** The front matter of a report is not marked off. */
  FRONT_MATTER_BROKEN(Severity.ERROR),
  /** A front matter key that is not known. */
  KEY_UNKNOWN(Severity.ERROR),
  /** A front matter key that is needed is not there. */
  KEY_MISSING(Severity.ERROR),
  /** A front matter key stands there twice. */
  KEY_TWICE(Severity.ERROR),
  /** A front matter key that this kind of report does not take. */
  KEY_OUT_OF_PLACE(Severity.ERROR),
  /** A session, range test, template or report that is named does not exist. */
  NAME_UNKNOWN(Severity.ERROR),
  /** No session can be taken into a library. */
  LIBRARY_EMPTY(Severity.ERROR),
  /** The range test is of another vehicle than the session. */
  VEHICLE_DIFFERS(Severity.NOTICE),
  /** The article or a template cannot be carried out. */
  TEMPLATE_BROKEN(Severity.ERROR),
  /** The article holds a picture, of which only the words are printed. */
  PICTURE_LEFT_OUT(Severity.NOTICE),
  /** The article names a number that the report does not have. */
  NUMBER_UNKNOWN(Severity.ERROR),
  /** Numbers are no longer what they were in the version that was published. */
  NUMBERS_MOVED(Severity.ERROR),
  /** Numbers of a draft are no longer what they were in the version that was published. */
  NUMBERS_MOVED_IN_DRAFT(Severity.NOTICE),
  /** A PDF or numbers.json is not one that this program made, or it is damaged. */
  PUBLISHED_NOT_UNDERSTOOD(Severity.ERROR),
  /** A figure typed by hand in the article disagrees with what was measured or stated. */
  FIGURE_CONTRADICTED(Severity.ERROR),
  /** A line is marked as deliberate, and nothing in it is contradicted. */
  MARK_NOT_NEEDED(Severity.NOTICE),
  /** A file has more problems than are listed one by one. */
  MORE_PROBLEMS(Severity.NOTICE);

  private final Severity severity;

  ProblemCode(Severity severity) {
    this.severity = severity;
  }

  /** How much a problem of this kind matters. */
  public Severity severity() {
    return severity;
  }

  /** The code as it is printed, such as {@code cell-not-a-number}. */
  public String slug() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
