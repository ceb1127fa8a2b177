package taperbook.measure;

import java.util.Optional;
import taperbook.model.Basis;
import taperbook.model.Estimate;
import taperbook.model.Facts;
import taperbook.model.Method;
import taperbook.model.RangeItem;
import taperbook.model.RangeTest;

/**
 * The energy of a full battery by the range test:
 *
 * <pre>
 *   full energy = energy used * 100 / (start soc - end soc)      [kWh]
 * </pre>
 */
final class DrivenEnergy {
  private DrivenEnergy() {}

  static Derived ofFullBattery(Optional<RangeTest> test) {
    if (test.isEmpty()) {
      return withheld(RangeFigures.NO_TEST);
    }
    Facts<RangeItem> facts = test.get().facts();
    Optional<Estimate> used = facts.amount(RangeItem.ENERGY_USED);
    Optional<Estimate> start = facts.amount(RangeItem.START_SOC);
    Optional<Estimate> end = facts.amount(RangeItem.END_SOC);
    if (used.isEmpty()) {
      return withheld("the energy used in the range test is not known");
    }
    if (start.isEmpty() || end.isEmpty()) {
      return withheld("the state of charge at the start or end of the drive is not known");
    }
    Estimate share = start.get().minus(end.get());
    if (share.bounds().low() <= 0) {
      return withheld("the drive used less charge than the display can tell");
    }
    return Derived.measured(
        used.get().over(share).times(100),
        RangeFigures.rows(facts, RangeItem.ENERGY_USED, RangeItem.START_SOC, RangeItem.END_SOC),
        Basis.ENERGY,
        Method.DRIVE_SHARE);
  }

  private static Derived withheld(String reason) {
    return Derived.withheld(reason, Basis.ENERGY, Method.DRIVE_SHARE);
  }
}
