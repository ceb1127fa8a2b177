package taperbook.input;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.session.ConditionItem;
import taperbook.session.RowRef;
import taperbook.session.Session;

/** Checks that the stops of a report are of one car on one day. */
public final class StopsCheck {
  private StopsCheck() {}

  /**
   * Returns an error for each stop of another vehicle or another day than the reported session.
   *
   * @param main the reported session
   * @param stops the stops; may be empty
   */
  public static List<Problem> check(Session main, List<Session> stops) {
    return stops.stream()
        .flatMap(
            stop ->
                Stream.of(ConditionItem.VEHICLE, ConditionItem.DATE)
                    .flatMap(item -> differs(main, stop, item)))
        .toList();
  }

  private static Stream<Problem> differs(Session main, Session stop, ConditionItem item) {
    Optional<String> expected = main.conditions().text(item);
    Optional<String> found = stop.conditions().text(item);
    if (found.isPresent() && found.equals(expected)) {
      return Stream.of();
    }
    ProblemLog log = new ProblemLog(stop.conditions().file());
    log.add(
        ProblemCode.FACTS_CONTRADICT,
        stop.conditions().rows(item).stream().mapToInt(RowRef::line).findFirst().orElse(0),
        0,
        "a stop whose " + item.words() + " is " + found.map(Quoted::of).orElse("not known"),
        "the "
            + item.words()
            + " of the reported session, "
            + expected.map(Quoted::of).orElse("which is not known either"),
        "take the stop out of the front matter, or mend what is wrong");
    return log.list().stream();
  }
}
