package taperbook.result;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import taperbook.plan.ReportPlan;
import taperbook.session.Caveat;
import taperbook.session.ConditionItem;
import taperbook.session.Origin;

/**
 * All results for one report.
 *
 * @param plan the report's settings
 * @param main the reported session
 * @param compared the sessions it is compared with, in order
 * @param common the ranges that all of them cover
 * @param pairs the reported session's curve compared with that of each other session, in the same
 *     order
 * @param runs repeats of the reported session, and the spread between runs
 * @param unlike conditions in which the sessions are known to differ, so that no charging result is
 *     marked as best
 */
public record ReportResult(
    ReportPlan plan,
    SessionResult main,
    List<SessionResult> compared,
    CommonGround common,
    List<PairResult> pairs,
    Runs runs,
    List<ConditionItem> unlike)
    implements Results {
  public ReportResult {
    compared = List.copyOf(compared);
    pairs = List.copyOf(pairs);
    unlike = List.copyOf(unlike);
  }

  /** Creates the result of a report on single runs under similar conditions. */
  public ReportResult(
      ReportPlan plan,
      SessionResult main,
      List<SessionResult> compared,
      CommonGround common,
      List<PairResult> pairs) {
    this(plan, main, compared, common, pairs, Runs.SINGLE, List.of());
  }

  /** Creates the result of a report without comparisons. */
  public ReportResult(ReportPlan plan, SessionResult main, List<SessionResult> compared) {
    this(plan, main, compared, CommonGround.NONE, List.of());
  }

  /** Returns the same results for a plan that differs only in its text. */
  public ReportResult withTextOf(ReportPlan other) {
    return new ReportResult(plan.withTextOf(other), main, compared, common, pairs, runs, unlike);
  }

  /** Returns the reported session followed by the compared ones. */
  @Override
  public List<SessionResult> sessions() {
    List<SessionResult> all = new ArrayList<>();
    all.add(main);
    all.addAll(compared);
    return all;
  }

  /** Returns all numbers of the report: those of each session, of each pair, and of each repeat. */
  @Override
  public List<Numbers> numbers() {
    return Stream.of(
            sessions().stream().map(SessionResult::numbers),
            pairs.stream().map(PairResult::numbers),
            runs.repeats().stream().map(SessionResult::numbers))
        .flatMap(s -> s)
        .toList();
  }

  @Override
  public Stream<String> days() {
    return main.session().conditions().text(ConditionItem.DATE).stream();
  }

  /**
   * Finds a number of the report.
   *
   * @param id its id
   * @param session name of the session; for a number of a pair, that of the compared session, or
   *     that of the reported one if there is only one pair
   */
  public Optional<ReportNumber> find(String id, String session) {
    return own(session)
        .flatMap(numbers -> numbers.find(id))
        .or(() -> ofPair(session).flatMap(numbers -> numbers.find(id)));
  }

  /** Returns every id that {@link #find} accepts for a session, in order. */
  public Set<String> ids(String session) {
    return Stream.of(own(session), ofPair(session))
        .flatMap(Optional::stream)
        .flatMap(numbers -> numbers.all().stream())
        .map(ReportNumber::id)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /**
   * Returns the caveats of a number as sentences; for a number of a pair, each with the session
   * that it is about.
   */
  @Override
  public List<String> cautions(ReportNumber number) {
    return number.caveats().stream().map(c -> about(number, c) + c.sentence()).toList();
  }

  private String about(ReportNumber number, Caveat caveat) {
    if (number.origin().against().isEmpty()) {
      return "";
    }
    List<String> names =
        sessions().stream()
            .filter(s -> s.caveats().contains(caveat))
            .map(s -> s.session().name())
            .filter(n -> isOf(number.origin(), n))
            .toList();
    return names.isEmpty() ? "" : String.join(", ", names) + ": ";
  }

  private static boolean isOf(Origin origin, String session) {
    return origin.session().equals(session) || origin.against().equals(session);
  }

  private Optional<Numbers> own(String session) {
    return Stream.concat(sessions().stream(), runs.repeats().stream())
        .filter(s -> s.session().name().equals(session))
        .findFirst()
        .map(SessionResult::numbers);
  }

  private Optional<Numbers> ofPair(String session) {
    boolean only = pairs.size() == 1 && main.session().name().equals(session);
    return pairs.stream()
        .filter(p -> only || p.other().equals(session))
        .findFirst()
        .map(PairResult::numbers);
  }
}
