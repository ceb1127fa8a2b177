package taperbook.session;

import java.util.List;

/**
 * One range test: a drive between two states of charge.
 *
 * @param name name of its folder
 * @param facts the record
 * @param legs the drive leg by leg; empty if not recorded
 */
public record RangeTest(String name, Facts<RangeItem> facts, List<Leg> legs) {
  /** Copies the legs. */
  public RangeTest {
    legs = List.copyOf(legs);
  }

  /** The car, as the record calls it. */
  public String vehicle() {
    return facts.text(RangeItem.VEHICLE).orElse("unnamed vehicle");
  }
}
