package taperbook.input.plan;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.i18n.Texts;
import taperbook.input.folder.FrontMatterValue;

/** Parses calendar days in front matter. */
final class DateParser {
  private DateParser() {}

  /** Returns the day, or reports a problem at its location. */
  static Optional<LocalDate> read(FrontMatterValue written, ProblemLog log) {
    Optional<LocalDate> day = day(written.text());
    if (day.isEmpty()) {
      written.refuse(
          log,
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          Texts.of("input.date_parser.day_in_iso_8601_as"),
          Texts.of("input.common.write_year_month_and_day"));
    }
    return day;
  }

  /** Parses a day; empty if the text is not a day. */
  static Optional<LocalDate> day(String text) {
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
