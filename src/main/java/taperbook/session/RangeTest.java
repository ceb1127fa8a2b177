package taperbook.session;

import java.util.List;
import taperbook.i18n.Texts;

/**
 * One range test: a drive between two states of charge.
 *
 * @param name name of its folder
 * @param facts the record
 * @param legs the legs of the drive; empty if not recorded
 */
public record RangeTest(String name, Facts<RangeItem> facts, List<Leg> legs) {
  public RangeTest {
    legs = List.copyOf(legs);
  }

  /** Returns the car's name in the record. */
  public String vehicle() {
    return facts.text(RangeItem.VEHICLE).orElse(Texts.of("condition.common.unnamed_vehicle"));
  }
}
