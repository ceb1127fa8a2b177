package taperbook.result;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import taperbook.plan.Plan;

/** All results of one plan: of the report of a session, or of a library. */
public sealed interface Results permits ReportResult, LibraryResult {
  /** Returns the settings. */
  Plan plan();

  /** Returns all numbers, by session or pair. */
  List<Numbers> numbers();

  /** Returns the days of the sessions that date the results, ISO 8601. */
  Stream<String> days();

  /** Returns the caveats of a number as sentences. */
  default List<String> cautions(ReportNumber number) {
    return number.cautions();
  }

  /** Returns the sessions with all their results, the reported one first; a library has none. */
  default List<SessionResult> sessions() {
    return List.of();
  }

  /** Returns the ranges that all compared sessions cover. */
  default CommonGround common() {
    return CommonGround.NONE;
  }

  /** Returns true if there are too many sessions to show each of them. */
  default boolean isLarge() {
    return false;
  }

  /** Applies one function to the results of a session's report and another to a library's. */
  default <R> R fold(
      Function<? super ReportResult, ? extends R> report,
      Function<? super LibraryResult, ? extends R> library) {
    return this instanceof ReportResult r ? report.apply(r) : library.apply((LibraryResult) this);
  }
}
