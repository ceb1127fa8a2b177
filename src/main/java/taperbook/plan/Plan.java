package taperbook.plan;

import java.util.function.Function;
import taperbook.quantity.WantedDistance;

/** The plan in {@code reports/NAME.md}: a report of one session, or a library of all. */
public sealed interface Plan permits ReportPlan, LibraryPlan {
  /** Returns the name of the report: that of its file without the extension. */
  String name();

  /** Returns title and author. */
  ReportPlan.Heading heading();

  /** Returns how numbers are shown. */
  ReportPlan.Style style();

  /** Returns the tester's own text. */
  ReportPlan.Article article();

  /** Returns the id of the number for the time to add a distance on the chosen basis. */
  default String timeToAddId(WantedDistance distance) {
    String id = "time_to_add_" + distance.idPart();
    return style().basis() == Basis.RATED ? id + "_rated" : id;
  }

  /** Applies one function to the plan of a session's report and another to that of a library. */
  default <R> R fold(
      Function<? super ReportPlan, ? extends R> report,
      Function<? super LibraryPlan, ? extends R> library) {
    return this instanceof ReportPlan r ? report.apply(r) : library.apply((LibraryPlan) this);
  }
}
