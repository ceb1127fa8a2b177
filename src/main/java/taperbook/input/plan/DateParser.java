package taperbook.input.plan;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.input.folder.FrontMatterValue;

/** Reads calendar days as front matters state them. */
final class DateParser {
  private DateParser() {}

  /** The day, or a problem at its place. */
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

  /** The day, if the text is one. */
  static Optional<LocalDate> day(String text) {
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
