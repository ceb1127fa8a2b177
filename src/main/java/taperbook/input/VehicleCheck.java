package taperbook.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.input.cell.Suggestion;
import taperbook.result.Drives;
import taperbook.session.ConditionItem;
import taperbook.session.Fact;
import taperbook.session.Facts;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.RowRef;
import taperbook.session.Session;

/**
 * Checks that each range test of a report is used: it is of a vehicle that one of its sessions
 * charges, and agrees with the first of that vehicle or forms a range over speed with it. Without
 * this check, a typing error in a vehicle's name would withhold every driven distance silently.
 */
public final class VehicleCheck {
  private VehicleCheck() {}

  /**
   * Returns a notice for each range test that no number uses.
   *
   * @param sessions the reported and the compared sessions
   * @param rangeTests the range tests that the report names
   * @param ofSeasons range tests of the comparison of seasons
   */
  public static List<Problem> check(
      List<Session> sessions, List<RangeTest> rangeTests, List<RangeTest> ofSeasons) {
    Set<String> charged =
        sessions.stream().map(Session::vehicle).collect(Collectors.toCollection(TreeSet::new));
    Stream<Problem> others =
        rangeTests.stream()
            .filter(test -> !charged.contains(test.vehicle()))
            .flatMap(test -> notice(test, charged));
    Stream<Problem> unused =
        charged.stream()
            .map(vehicle -> Drives.of(vehicle, rangeTests))
            .flatMap(
                drives ->
                    drives.unused().stream()
                        .filter(u -> !ofSeasons.contains(u.test()))
                        .flatMap(u -> unused(u, drives)));
    return Stream.concat(others, unused).toList();
  }

  /**
   * Returns a problem for each repeat that is of another vehicle than the reported session.
   *
   * @param reported the reported session
   * @param repeats its repeats, in order
   */
  public static List<Problem> checkRepeats(Session reported, List<Session> repeats) {
    List<Problem> problems = new ArrayList<>();
    for (Session repeat : repeats) {
      if (!repeat.vehicle().equals(reported.vehicle())) {
        Facts<ConditionItem> conditions = repeat.conditions();
        ProblemLog log = new ProblemLog(conditions.file());
        int line = conditions.known(ConditionItem.VEHICLE).map(f -> f.row().line()).orElse(0);
        log.add(
            ProblemCode.REPEAT_DIFFERS,
            line,
            0,
            "the vehicle " + Quoted.of(repeat.vehicle()) + " of a repeat",
            "the vehicle of the session reported, " + Quoted.of(reported.vehicle()),
            "write the vehicle alike if it is the same, or name the session under compare");
        problems.addAll(log.list());
      }
    }
    return problems;
  }

  private static Stream<Problem> unused(Drives.Unused unused, Drives drives) {
    RangeTest first = drives.first().orElseThrow();
    RangeTest test = unused.test();
    boolean byWeather = unused.item() == RangeItem.AMBIENT_TEMPERATURE;
    ProblemLog log = new ProblemLog(test.facts().file());
    log.add(
        ProblemCode.RANGE_TEST_UNUSED,
        test.facts().rows(unused.item()).stream().mapToInt(RowRef::line).findFirst().orElse(0),
        0,
        "the "
            + unused.item().words()
            + " "
            + stated(test, unused.item())
            + ", and "
            + stated(first, unused.item())
            + " in "
            + first.facts().file()
            + ", which is named first: no number rests on this drive",
        byWeather
            ? "air temperatures within " + Drives.SIMILAR_TEMPERATURE_WORDS + " of the first"
            : "a speed within "
                + Drives.SAME_SPEED_WORDS
                + " of the first, or drives at three speeds for a range over speed",
        byWeather
            ? "name a drive in like weather, or take this one out of the front matter"
            : "name a drive at a third speed, or take this one out of the front matter");
    return log.list().stream();
  }

  private static String stated(RangeTest test, RangeItem item) {
    return test.facts().known(item).map(f -> f.written() + " " + f.unit()).orElse("not known");
  }

  private static Stream<Problem> notice(RangeTest test, Set<String> charged) {
    ProblemLog log = new ProblemLog(test.facts().file());
    int line = test.facts().known(RangeItem.VEHICLE).map(Fact::row).map(RowRef::line).orElse(0);
    log.add(
        ProblemCode.VEHICLE_DIFFERS,
        line,
        0,
        "the vehicle " + Quoted.of(test.vehicle()),
        "the vehicle of a session in the report: "
            + charged.stream().map(Quoted::of).collect(Collectors.joining(", ")),
        Suggestion.of(test.vehicle(), charged)
            .map(v -> "write " + Quoted.of(v) + " if they are the same")
            .orElse("name a range test of that vehicle, or leave this one out"));
    return log.list().stream();
  }
}
