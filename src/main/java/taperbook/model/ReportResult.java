package taperbook.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All that was measured for one report.
 *
 * @param plan what the report should show
 * @param main the session reported
 * @param compared the sessions it is held against, in order
 * @param common what all of them went through
 * @param pairs the reported session's curve against each compared one's, in the same order
 */
public record ReportResult(
    ReportPlan plan,
    SessionResult main,
    List<SessionResult> compared,
    CommonGround common,
    List<PairResult> pairs) {
  /** Copies the lists. */
  public ReportResult {
    compared = List.copyOf(compared);
    pairs = List.copyOf(pairs);
  }

  /** The result of a report whose sessions were not held against each other. */
  public ReportResult(ReportPlan plan, SessionResult main, List<SessionResult> compared) {
    this(plan, main, compared, CommonGround.NONE, List.of());
  }

  /** The reported session and then the compared ones. */
  public List<SessionResult> sessions() {
    List<SessionResult> all = new ArrayList<>();
    all.add(main);
    all.addAll(compared);
    return all;
  }

  /**
   * A number of the report.
   *
   * @param id its id
   * @param session name of the session; for a number of a pair, that of the session compared
   */
  public Optional<ReportNumber> find(String id, String session) {
    Optional<ReportNumber> own =
        sessions().stream()
            .filter(s -> s.session().name().equals(session))
            .findFirst()
            .flatMap(s -> s.numbers().find(id));
    return own.or(
        () ->
            pairs.stream()
                .filter(p -> p.other().equals(session))
                .findFirst()
                .flatMap(p -> p.numbers().find(id)));
  }
}
