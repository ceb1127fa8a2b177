package taperbook.diagnostics;

import java.util.Locale;
import taperbook.i18n.Texts;

/** All kinds of problems in the input. The slug is stable: it is printed and documented. */
public enum ProblemCode {
  FILE_MISSING(Severity.ERROR),
  FILE_UNREADABLE(Severity.ERROR),
  FILE_TOO_LARGE(Severity.ERROR),
  NAME_NOT_ALLOWED(Severity.ERROR),
  TEXT_NOT_UTF8(Severity.ERROR),
  WORKBOOK(Severity.ERROR),
  CSV_BROKEN(Severity.ERROR),
  CSV_EMPTY(Severity.ERROR),
  ROW_TOO_LONG(Severity.ERROR),
  ROW_TOO_SHORT(Severity.NOTICE),
  COLUMN_WITHOUT_UNIT(Severity.ERROR),
  COLUMN_UNIT_UNKNOWN(Severity.ERROR),
  COLUMN_TWICE(Severity.ERROR),
  COLUMN_MISSING(Severity.ERROR),
  COLUMN_IGNORED(Severity.NOTICE),
  CELL_NOT_A_NUMBER(Severity.ERROR),
  CELL_NOT_A_TIME(Severity.ERROR),
  NUMBER_AMBIGUOUS(Severity.ERROR),
  NUMBER_WRITTEN_UNLIKE(Severity.NOTICE),
  CELL_OUT_OF_RANGE(Severity.ERROR),
  TIME_MISSING(Severity.ERROR),
  TIME_GOES_BACK(Severity.ERROR),
  CLOCK_PAST_MIDNIGHT(Severity.NOTICE),
  CLOCK_JUMPS(Severity.NOTICE),
  DROPOUT(Severity.NOTICE),
  SOC_FALLS(Severity.NOTICE),
  ENERGY_FALLS(Severity.ERROR),
  ENERGY_RESET(Severity.NOTICE),
  READING_IMPOSSIBLE(Severity.ERROR),
  READING_DOUBTFUL(Severity.NOTICE),
  AS_READ_NOT_UNDERSTOOD(Severity.ERROR),
  BATTERY_CONTRADICTED(Severity.ERROR),
  SESSION_TWICE(Severity.NOTICE),
  PAUSE_WITH_POWER(Severity.NOTICE),
  TOO_FEW_READINGS(Severity.ERROR),
  ITEM_UNKNOWN(Severity.ERROR),
  ITEM_MISSING(Severity.ERROR),
  ITEM_TWICE(Severity.ERROR),
  VALUE_NOT_UNDERSTOOD(Severity.ERROR),
  VALUE_OUT_OF_RANGE(Severity.ERROR),
  DIGITS_TOO_FEW(Severity.ERROR),
  UNIT_NOT_UNDERSTOOD(Severity.ERROR),
  HOW_KNOWN_NOT_UNDERSTOOD(Severity.ERROR),
  KNOWN_CONTRADICTION(Severity.ERROR),
  FACTS_CONTRADICT(Severity.ERROR),
  FRONT_MATTER_BROKEN(Severity.ERROR),
  KEY_UNKNOWN(Severity.ERROR),
  KEY_MISSING(Severity.ERROR),
  KEY_TWICE(Severity.ERROR),
  KEY_OUT_OF_PLACE(Severity.ERROR),
  NAME_UNKNOWN(Severity.ERROR),
  LIBRARY_EMPTY(Severity.ERROR),
  VEHICLE_DIFFERS(Severity.NOTICE),
  REPEAT_DIFFERS(Severity.ERROR),
  RANGE_TEST_UNUSED(Severity.NOTICE),
  TEMPLATE_BROKEN(Severity.ERROR),
  PICTURE_LEFT_OUT(Severity.NOTICE),
  NUMBER_UNKNOWN(Severity.ERROR),
  NUMBER_WITHHELD(Severity.NOTICE),
  NUMBERS_MOVED(Severity.ERROR),
  NUMBERS_MOVED_IN_DRAFT(Severity.NOTICE),
  PUBLISHED_NOT_UNDERSTOOD(Severity.ERROR),
  FIGURE_CONTRADICTED(Severity.ERROR),
  MARK_NOT_NEEDED(Severity.NOTICE),
  MORE_PROBLEMS(Severity.NOTICE);

  private final Severity severity;

  ProblemCode(Severity severity) {
    this.severity = severity;
  }

  /** Returns a one-sentence description of the problem. */
  public String meaning() {
    return Texts.ofConstant("problem", this, "meaning");
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
