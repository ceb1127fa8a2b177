package taperbook.metric.recording;

import java.util.Optional;
import taperbook.i18n.Message;
import taperbook.quantity.Estimate;
import taperbook.session.DisplayRounding;
import taperbook.session.Facts;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;

/**
 * The energy of a full battery, from the range test:
 *
 * <pre>
 *   full energy = energy used * 100 / (start soc - end soc)      [kWh]
 * </pre>
 */
public final class DrivenEnergy {
  private DrivenEnergy() {}

  public static Finding<Estimate> ofFullBattery(
      Optional<RangeTest> test, DisplayRounding rounding) {
    return RangeFigures.facts(test).flatMap(facts -> ofFullBattery(facts, rounding));
  }

  private static Finding<Estimate> ofFullBattery(Facts<RangeItem> facts, DisplayRounding rounding) {
    return Finding.of(
            facts.amount(RangeItem.ENERGY_USED),
            Message.of("metric.driven_energy.energy_used_in_range_test"))
        .from(used -> RangeFigures.rows(facts, RangeItem.ENERGY_USED))
        .flatMap(
            used ->
                RangeFigures.chargeUsed(facts, rounding).map(share -> used.over(share).times(100)));
  }
}
