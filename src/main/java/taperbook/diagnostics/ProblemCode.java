package taperbook.diagnostics;

import java.util.Locale;

/** All kinds of problems in the input. The slug is stable: it is printed and documented. */
public enum ProblemCode {
  FILE_MISSING(Severity.ERROR, "A file or folder that is needed is not there."),
  FILE_UNREADABLE(Severity.ERROR, "A file cannot be read."),
  FILE_TOO_LARGE(Severity.ERROR, "A file is larger than is read."),
  NAME_NOT_ALLOWED(
      Severity.ERROR,
      "A file or folder name has characters that are not used, or is one that not every computer"
          + " can store."),
  TEXT_NOT_UTF8(
      Severity.ERROR,
      "A file holds bytes that are not text in UTF-8, or in the encoding that is stated."),
  WORKBOOK(Severity.ERROR, "A file is the workbook of a spreadsheet program, not text."),
  CSV_BROKEN(Severity.ERROR, "A CSV file breaks the rules of quoting."),
  CSV_EMPTY(Severity.ERROR, "A CSV file has no header or no rows."),
  ROW_TOO_LONG(Severity.ERROR, "A row has more cells than the header."),
  ROW_TOO_SHORT(Severity.NOTICE, "A row has fewer cells than the header."),
  COLUMN_WITHOUT_UNIT(Severity.ERROR, "A column head has no unit."),
  COLUMN_UNIT_UNKNOWN(Severity.ERROR, "A column head has a unit that its quantity does not take."),
  COLUMN_TWICE(Severity.ERROR, "Two columns have the same meaning."),
  COLUMN_MISSING(Severity.ERROR, "A column that is needed is not there."),
  COLUMN_IGNORED(Severity.NOTICE, "A column whose name is not known; it is kept and ignored."),
  CELL_NOT_A_NUMBER(Severity.ERROR, "A cell that should hold a number holds something else."),
  CELL_NOT_A_TIME(Severity.ERROR, "A cell that should hold a time holds something else."),
  NUMBER_AMBIGUOUS(
      Severity.ERROR,
      "A number can be read in two ways: its mark may group thousands or be the decimal mark."),
  NUMBER_WRITTEN_UNLIKE(
      Severity.NOTICE, "A number has other decimals than the others of its column."),
  CELL_OUT_OF_RANGE(Severity.ERROR, "A number lies outside what its quantity can be."),
  TIME_MISSING(Severity.ERROR, "A row has readings but no time."),
  TIME_GOES_BACK(Severity.ERROR, "Time goes back."),
  CLOCK_PAST_MIDNIGHT(Severity.NOTICE, "A clock without a date went past midnight."),
  CLOCK_JUMPS(Severity.NOTICE, "A local clock jumps by an hour, as where daylight saving begins."),
  DROPOUT(Severity.NOTICE, "A recording stops for much longer than its usual interval."),
  SOC_FALLS(Severity.NOTICE, "State of charge falls during charging."),
  ENERGY_FALLS(Severity.ERROR, "The energy counter falls during charging."),
  ENERGY_RESET(Severity.NOTICE, "The energy counter began anew; it is carried on."),
  READING_IMPOSSIBLE(
      Severity.ERROR, "A reading that cannot be right, whatever happened in the session."),
  READING_DOUBTFUL(Severity.NOTICE, "A reading that does not fit the others."),
  AS_READ_NOT_UNDERSTOOD(
      Severity.ERROR,
      "An as read cell states neither confirmed nor doubtful of the row's readings."),
  BATTERY_CONTRADICTED(
      Severity.ERROR,
      "Charge and energy or power imply a battery far from the one that is stated, or from any."),
  SESSION_TWICE(Severity.NOTICE, "Two sessions have the same readings, byte for byte."),
  PAUSE_WITH_POWER(Severity.NOTICE, "A row is noted as a pause, and its power is not zero."),
  TOO_FEW_READINGS(Severity.ERROR, "There are too few readings to measure anything."),
  ITEM_UNKNOWN(Severity.ERROR, "An item whose name is not known."),
  ITEM_MISSING(Severity.ERROR, "A required item is not there."),
  ITEM_TWICE(Severity.ERROR, "An item stands there twice."),
  VALUE_NOT_UNDERSTOOD(
      Severity.ERROR, "An item's value does not have the form that the item takes."),
  VALUE_OUT_OF_RANGE(Severity.ERROR, "An item's value lies outside what it can be."),
  DIGITS_TOO_FEW(
      Severity.ERROR, "An item's value has too few digits for what is computed from it."),
  UNIT_NOT_UNDERSTOOD(Severity.ERROR, "An item's unit is missing or not one that the item takes."),
  HOW_KNOWN_NOT_UNDERSTOOD(
      Severity.ERROR, "An item's how known cell is not one of the words it takes."),
  KNOWN_CONTRADICTION(
      Severity.ERROR,
      "A value, or what it is to give or take, and the word unknown contradict each other."),
  FACTS_CONTRADICT(Severity.ERROR, "Facts contradict each other."),
  FRONT_MATTER_BROKEN(Severity.ERROR, "The front matter of a report is not marked off."),
  KEY_UNKNOWN(Severity.ERROR, "A front matter key that is not known."),
  KEY_MISSING(Severity.ERROR, "A front matter key that is needed is not there."),
  KEY_TWICE(Severity.ERROR, "A front matter key stands there twice."),
  KEY_OUT_OF_PLACE(Severity.ERROR, "A front matter key that this kind of report does not take."),
  NAME_UNKNOWN(
      Severity.ERROR, "A session, range test, template or report that is named does not exist."),
  LIBRARY_EMPTY(Severity.ERROR, "No session can be taken into a library."),
  VEHICLE_DIFFERS(Severity.NOTICE, "The range test is of another vehicle than the session."),
  REPEAT_DIFFERS(
      Severity.ERROR,
      "A session that is named as a repeat is of another vehicle than the reported."),
  RANGE_TEST_UNUSED(Severity.NOTICE, "A range test is named, and no number rests on it."),
  TEMPLATE_BROKEN(Severity.ERROR, "The article or a template cannot be carried out."),
  PICTURE_LEFT_OUT(
      Severity.NOTICE, "The article holds a picture, of which only the words are printed."),
  NUMBER_UNKNOWN(Severity.ERROR, "The article names a number that the report does not have."),
  NUMBER_WITHHELD(Severity.NOTICE, "The article prints a number that was withheld."),
  NUMBERS_MOVED(
      Severity.ERROR, "Numbers are no longer what they were in the version that was published."),
  NUMBERS_MOVED_IN_DRAFT(
      Severity.NOTICE,
      "Numbers of a draft are no longer what they were in the version that was published."),
  PUBLISHED_NOT_UNDERSTOOD(
      Severity.ERROR, "A PDF or numbers.json is not one that this program made, or it is damaged."),
  FIGURE_CONTRADICTED(
      Severity.ERROR,
      "A figure typed by hand in the article disagrees with what was measured or stated."),
  MARK_NOT_NEEDED(
      Severity.NOTICE, "A line is marked as deliberate, and nothing in it is contradicted."),
  MORE_PROBLEMS(Severity.NOTICE, "A file has more problems than are listed one by one.");

  private final Severity severity;
  private final String meaning;

  ProblemCode(Severity severity, String meaning) {
    this.severity = severity;
    this.meaning = meaning;
  }

  /** Returns a one-sentence description of the problem. */
  public String meaning() {
    return meaning;
  }

  /** Returns the severity of problems of this kind. */
  public Severity severity() {
    return severity;
  }

  /** Returns the printed code, such as {@code cell-not-a-number}. */
  public String slug() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
