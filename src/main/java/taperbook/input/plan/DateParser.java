package taperbook.input.plan;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.input.folder.FrontMatterValue;

/** Parses calendar days in front matter. */
final class DateParser {
  private DateParser() {}

  /** Returns the day, or reports a problem at its location. */
  static Optional<LocalDate> read(FrontMatterValue written, ProblemLog log) {
    Optional<LocalDate> day = day(written.text());
    if (day.isEmpty()) {
      log.add(
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          written.line(),
          written.column(),
          Quoted.of(written.text()),
          "a day in ISO 8601, as in 2026-03-14",
          "write year, month and day in that form");
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
