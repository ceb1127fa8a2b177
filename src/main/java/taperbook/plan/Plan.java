package taperbook.plan;

import java.util.function.Function;
import taperbook.quantity.WantedDistance;

/** What {@code reports/NAME.md} asks for: a report of one session, or a library of all. */
public sealed interface Plan permits ReportPlan, LibraryPlan {
  /** Name of the report, that of its file without the ending. */
  String name();

  /** What stands at the top. */
  ReportPlan.Heading heading();

  /** How numbers are shown. */
  ReportPlan.Style style();

  /** The tester's own text. */
  ReportPlan.Article article();

  /** Id of the number that tells the time to add a distance on the basis that was chosen. */
  default String timeToAddId(WantedDistance distance) {
    String id = "time_to_add_" + distance.idPart();
    return style().basis() == Basis.RATED ? id + "_rated" : id;
  }

  /** Does one thing with the plan of a session's report and another with that of a library. */
  default <R> R fold(
      Function<? super ReportPlan, ? extends R> report,
      Function<? super LibraryPlan, ? extends R> library) {
    return this instanceof ReportPlan r ? report.apply(r) : library.apply((LibraryPlan) this);
  }
}
