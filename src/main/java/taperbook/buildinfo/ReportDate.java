package taperbook.buildinfo;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import taperbook.result.Results;

/**
 * The date that output files carry, which is never the date of the run: {@code published} in the
 * front matter; otherwise the environment variable {@code SOURCE_DATE_EPOCH}; otherwise the date of
 * the session.
 *
 * @see <a href="https://reproducible-builds.org/specs/source-date-epoch/">SOURCE_DATE_EPOCH</a>
 */
public final class ReportDate {
  private final Map<String, String> environment;

  public ReportDate(Map<String, String> environment) {
    this.environment = Map.copyOf(environment);
  }

  /** Returns the date of a report or library; of several days of sessions, the latest. */
  public LocalDate of(Results results) {
    return results
        .plan()
        .heading()
        .published()
        .or(this::sourceDateEpoch)
        .or(() -> results.days().map(LocalDate::parse).max(Comparator.naturalOrder()))
        .orElse(LocalDate.EPOCH);
  }

  /** Returns the date of a recording sheet, which has no session and no publication. */
  public LocalDate ofSheet() {
    return sourceDateEpoch().orElse(LocalDate.EPOCH);
  }

  private Optional<LocalDate> sourceDateEpoch() {
    String seconds = environment.getOrDefault("SOURCE_DATE_EPOCH", "").strip();
    if (!seconds.matches("[0-9]{1,11}")) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          LocalDate.ofInstant(Instant.ofEpochSecond(Long.parseLong(seconds)), ZoneOffset.UTC));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** Returns the part of the environment that the date may depend on. */
  public String fingerprint() {
    return environment.getOrDefault("SOURCE_DATE_EPOCH", "");
  }
}
