package taperbook.metric.recording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.plan.Basis;
import taperbook.quantity.Estimate;
import taperbook.result.Method;
import taperbook.session.DisplayRounding;
import taperbook.session.Facts;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.RowRef;

/**
 * The energy of a full battery, from the range test:
 *
 * <pre>
 *   full energy = energy used * 100 / (start soc - end soc)      [kWh]
 * </pre>
 */
public final class DrivenEnergy {
  private DrivenEnergy() {}

  public static Derived ofFullBattery(Optional<RangeTest> test, DisplayRounding rounding) {
    if (test.isEmpty()) {
      return withheld(RangeFigures.NO_TEST);
    }
    Facts<RangeItem> facts = test.get().facts();
    Optional<Estimate> used = facts.amount(RangeItem.ENERGY_USED);
    Derived share = RangeFigures.chargeUsed(facts, rounding);
    if (used.isEmpty()) {
      return withheld("the energy used in the range test is not known");
    }
    if (share.withheld().isPresent()) {
      return withheld(share.withheld().get());
    }
    List<RowRef> rows = new ArrayList<>(RangeFigures.rows(facts, RangeItem.ENERGY_USED));
    rows.addAll(share.rows());
    return Derived.measured(
        used.get().over(share.estimate().orElseThrow()).times(100),
        rows,
        Basis.ENERGY,
        Method.DRIVE_SHARE);
  }

  private static Derived withheld(String reason) {
    return Derived.withheld(reason, Basis.ENERGY, Method.DRIVE_SHARE);
  }
}
