package taperbook.model;

import java.util.ArrayList;
import java.util.List;

/**
 * All that was measured for one report.
 *
 * @param plan what the report should show
 * @param main the session reported
 * @param compared the sessions it is held against, in order
 */
public record ReportResult(ReportPlan plan, SessionResult main, List<SessionResult> compared) {
  /** Copies the list. */
  public ReportResult {
    compared = List.copyOf(compared);
  }

  /** The reported session and then the compared ones. */
  public List<SessionResult> sessions() {
    List<SessionResult> all = new ArrayList<>();
    all.add(main);
    all.addAll(compared);
    return all;
  }
}
