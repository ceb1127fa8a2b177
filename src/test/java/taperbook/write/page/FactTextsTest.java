package taperbook.write.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import taperbook.model.Estimate;
import taperbook.model.Fact;
import taperbook.model.Facts;
import taperbook.model.HowKnown;
import taperbook.model.RangeItem;
import taperbook.model.RowRef;

final class FactTextsTest {
  private static final RowRef ROW = new RowRef("sessions/ring/range-test.csv", 3);

  @Test
  void what_is_written_to_give_or_take_stands_behind_the_value() {
    Map<RangeItem, Fact> facts = new EnumMap<>(RangeItem.class);
    facts.put(RangeItem.DISTANCE, fact("312.4", "km", "1.5"));
    facts.put(RangeItem.ODOMETER_CORRECTION, fact("1.004", "1", "0.002"));
    facts.put(RangeItem.AMBIENT_TEMPERATURE, fact("55", "degF", "4"));
    facts.put(RangeItem.AVERAGE_SPEED, fact("110", "km/h", ""));
    assertThat(FactTexts.table(new Facts<>(ROW.file(), RangeItem.class, facts)))
        .extracting(row -> row.get("value"))
        .containsExactly(
            "312.4\u00a0km, give or take 1.5\u00a0km",
            "1.004, give or take 0.002",
            "110\u00a0km/h",
            "55\u00a0\u00b0F, give or take 4\u00a0\u00b0F");
  }

  private static Fact fact(String value, String unit, String giveOrTake) {
    return new Fact(
        value,
        unit,
        Optional.of(Estimate.exactly(Double.parseDouble(value))),
        giveOrTake,
        HowKnown.MEASURED,
        ROW);
  }
}
