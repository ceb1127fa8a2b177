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

/** Finds what typed figures may be held against: the reported session's numbers and facts. */
final class Targets {
  private static final double SAME = 1e-9;

  private final ReportResult result;

  Targets(ReportResult result) {
    this.result = result;
  }

  ReportPlan plan() {
    return result.plan();
  }

  /** Where the session took place, if that is known. */
  Optional<String> place() {
    return result.main().session().conditions().text(ConditionItem.PLACE);
  }

  /** The number, if it was measured and not withheld. */
  Optional<Target> number(String id) {
    return result
        .main()
        .numbers()
        .find(id)
        .flatMap(n -> n.estimate().map(e -> new Target(n.id(), n.label(), n.unit(), e, true)));
  }

  /** A fact of the session, if it is known. */
  Optional<Target> condition(ConditionItem item) {
    return result.main().session().conditions().known(item).flatMap(f -> target(item, f, ""));
  }

  /** A fact of the range test, if it is known. */
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

  /** The distance that the report asks for, if it is this one in the same unit. */
  Optional<WantedDistance> wanted(Amount distance) {
    return plan().wishes().distances().stream()
        .filter(w -> w.unit() == distance.unit() && !distance.isRange())
        .filter(w -> Math.abs(w.amount() - distance.low()) < SAME)
        .findFirst();
  }

  /** The time to add a distance, on the basis that the words or else the report chose. */
  Optional<Target> timeToAdd(WantedDistance distance, boolean rated) {
    String id = "time_to_add_" + distance.idPart();
    return number(rated ? id + "_rated" : plan().timeToAddId(distance));
  }

  /** The time to add a distance in the other way that the words may mean. */
  Optional<Target> timeToAddByEnergy(WantedDistance distance) {
    return plan().style().basis() == Basis.RATED
        ? Optional.empty()
        : number("time_to_add_" + distance.idPart() + "_by_energy");
  }

  /** True if the amount has a value in common with a number. */
  boolean agrees(Amount amount, String id) {
    return number(id).filter(t -> t.agrees(amount)).isPresent();
  }
}
