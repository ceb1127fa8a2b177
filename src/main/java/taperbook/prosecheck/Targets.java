package taperbook.prosecheck;

import java.util.Optional;
import taperbook.plan.Basis;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.ReportResult;
import taperbook.session.ConditionItem;
import taperbook.session.Fact;
import taperbook.session.Item;
import taperbook.session.RangeItem;

/**
 * Finds values that typed figures may be compared with: the reported session's numbers and facts.
 */
final class Targets {
  private static final double SAME = 1e-9;

  private final ReportResult result;

  Targets(ReportResult result) {
    this.result = result;
  }

  ReportPlan plan() {
    return result.plan();
  }

  /** Returns the place of the session, if known. */
  Optional<String> place() {
    return result.main().session().conditions().text(ConditionItem.PLACE);
  }

  /** Returns the number if it was measured and not withheld. */
  Optional<Target> number(String id) {
    return result
        .main()
        .numbers()
        .find(id)
        .flatMap(n -> n.estimate().map(e -> new Target(n.id(), n.label(), n.unit(), e, true)));
  }

  /** Returns a fact of the session, if known. */
  Optional<Target> condition(ConditionItem item) {
    return result.main().session().conditions().known(item).flatMap(f -> target(item, f, ""));
  }

  /** Returns a fact of the range test, if known. */
  Optional<Target> drive(RangeItem item) {
    return result
        .main()
        .rangeTest()
        .flatMap(t -> t.facts().known(item))
        .flatMap(f -> target(item, f, " of the range test"));
  }

  private static Optional<Target> target(Item item, Fact fact, String of) {
    return item.kind()
        .quantity()
        .flatMap(
            q ->
                fact.amount()
                    .map(a -> new Target(item.words(), item.words() + of, Unit.base(q), a, false)));
  }

  /** Returns the requested distance that equals an amount in the same unit. */
  Optional<WantedDistance> wanted(Amount distance) {
    return plan().wishes().distances().stream()
        .filter(w -> w.unit() == distance.unit() && !distance.isRange())
        .filter(w -> Math.abs(w.amount() - distance.low()) < SAME)
        .findFirst();
  }

  /** Returns the time to add a distance, on the rated basis or that of the report. */
  Optional<Target> timeToAdd(WantedDistance distance, boolean rated) {
    String id = "time_to_add_" + distance.idPart();
    return number(rated ? id + "_rated" : plan().timeToAddId(distance));
  }

  /** Returns the time to add a distance by energy, which the words may also mean. */
  Optional<Target> timeToAddByEnergy(WantedDistance distance) {
    return plan().style().basis() == Basis.RATED
        ? Optional.empty()
        : number("time_to_add_" + distance.idPart() + "_by_energy");
  }

  /** Returns true if an amount overlaps the interval of a number. */
  boolean agrees(Amount amount, String id) {
    return number(id).filter(t -> t.agrees(amount)).isPresent();
  }
}
