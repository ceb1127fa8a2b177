package taperbook.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.plan.ReportPlan.Season;
import taperbook.quantity.Estimate;
import taperbook.session.ConditionItem;
import taperbook.session.Fact;
import taperbook.session.Facts;
import taperbook.session.Item;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.Session;

/** Checks that warm and cold runs are of the reported car and differ in temperature. */
public final class SeasonCheck {
  /** Minimum difference of air temperature between seasons, °C; common practice, no source. */
  private static final double MIN_DEGREES = 2;

  private final String vehicle;
  private final List<Problem> problems = new ArrayList<>();

  private SeasonCheck(Session main) {
    this.vehicle = main.vehicle();
  }

  /**
   * Returns an error for each run of another vehicle or without its temperature, and for each pair
   * whose second run is not the colder one.
   *
   * @param main the reported session
   * @param season its pairs; may be empty
   */
  public static List<Problem> check(Session main, Season<Session, RangeTest> season) {
    SeasonCheck check = new SeasonCheck(main);
    check.pairs(
        season.sessions().stream().map(Session::conditions).toList(),
        ConditionItem.VEHICLE,
        ConditionItem.AMBIENT_TEMPERATURE);
    check.pairs(
        season.drives().stream().map(RangeTest::facts).toList(),
        RangeItem.VEHICLE,
        RangeItem.AMBIENT_TEMPERATURE);
    return check.problems;
  }

  private <I extends Enum<I> & Item> void pairs(List<Facts<I>> runs, I car, I temperature) {
    for (Facts<I> run : runs) {
      if (run.text(car).filter(vehicle::equals).isEmpty()) {
        add(
            ProblemCode.FACTS_CONTRADICT,
            run,
            car,
            "the vehicle " + written(run, car) + " of a run under season",
            "the vehicle of the reported session, " + Quoted.of(vehicle),
            "write the vehicle alike if it is the same, or take the pair out of season");
      }
      if (run.amount(temperature).isEmpty()) {
        add(
            ProblemCode.ITEM_MISSING,
            run,
            temperature,
            "an ambient temperature that is not known, of a run under season",
            "the temperature of the air, which tells warm from cold",
            "state it, or take the pair out of season");
      }
    }
    for (int k = 0; k < runs.size(); k += 2) {
      Facts<I> cold = runs.get(k + 1);
      Optional<Double> from = runs.get(k).amount(temperature).map(Estimate::value);
      Optional<Double> to = cold.amount(temperature).map(Estimate::value);
      if (from.isPresent() && to.isPresent() && from.get() - to.get() <= MIN_DEGREES) {
        add(
            ProblemCode.FACTS_CONTRADICT,
            cold,
            temperature,
            written(cold, temperature) + " for the cold run of a pair under season",
            "more than 2 Cel below the "
                + written(runs.get(k), temperature)
                + " of the warm run in "
                + runs.get(k).file(),
            "name the warm run first, or take the pair out of season");
      }
    }
  }

  private static <I extends Enum<I> & Item> String written(Facts<I> facts, I item) {
    return facts
        .known(item)
        .map((Fact f) -> f.unit().isEmpty() ? Quoted.of(f.written()) : f.written() + " " + f.unit())
        .orElse("that is not known");
  }

  private <I extends Enum<I> & Item> void add(
      ProblemCode code, Facts<I> facts, I item, String found, String expected, String remedy) {
    ProblemLog log = new ProblemLog(facts.file());
    int line = Optional.ofNullable(facts.all().get(item)).map(f -> f.row().line()).orElse(0);
    log.add(code, line, 0, found, expected, remedy);
    problems.addAll(log.list());
  }
}
