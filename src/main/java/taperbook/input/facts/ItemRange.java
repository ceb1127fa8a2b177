package taperbook.input.facts;

import taperbook.input.cell.QuantityRange;
import taperbook.quantity.Quantity;
import taperbook.session.ConditionItem;
import taperbook.session.Item;
import taperbook.session.ItemKind;
import taperbook.session.RangeItem;

/** Plausible ranges of items; wide, to detect only typing errors and wrong units. */
final class ItemRange {
  private ItemRange() {}

  static QuantityRange of(Item item) {
    if (item instanceof ConditionItem condition) {
      return ofCondition(condition);
    }
    return item instanceof RangeItem range ? ofRange(range) : usual(item.kind());
  }

  private static QuantityRange ofCondition(ConditionItem item) {
    return switch (item) {
      case ODOMETER -> QuantityRange.from(0, 2_000_000);
      case STATION_RATED_POWER, VEHICLE_RATED_PEAK_POWER -> QuantityRange.above(0, 5000);
      case BATTERY_USABLE_ENERGY -> QuantityRange.above(0, 2000);
      case SOC_RESOLUTION -> QuantityRange.above(0, 25);
      case POWER_RESOLUTION -> QuantityRange.above(0, 50);
      case ENERGY_RESOLUTION -> QuantityRange.above(0, 10);
      case CLOCK_RESOLUTION -> QuantityRange.above(0, 3600);
      case DISPLAY_LAG -> QuantityRange.from(0, 600);
      default -> usual(item.kind());
    };
  }

  private static QuantityRange ofRange(RangeItem item) {
    return switch (item) {
      case DISTANCE, RATED_RANGE -> QuantityRange.above(0, 3000);
      case ENERGY_USED -> QuantityRange.above(0, 1000);
      case AVERAGE_SPEED, TARGET_SPEED -> QuantityRange.above(0, 400);
      case AIR_PRESSURE -> QuantityRange.from(300, 1100);
      case ROLLING_COEFFICIENT -> QuantityRange.from(0.003, 0.05);
      case VEHICLE_MASS -> QuantityRange.from(100, 10_000);
      default -> usual(item.kind());
    };
  }

  private static QuantityRange usual(ItemKind kind) {
    return switch (kind.quantity().orElse(Quantity.FACTOR)) {
      case TIME -> QuantityRange.from(0, 360_000);
      case SHARE -> QuantityRange.from(0, 100);
      case POWER, ENERGY -> QuantityRange.from(0, 1000);
      case TEMPERATURE -> QuantityRange.from(-60, 120);
      case VOLTAGE, CURRENT -> QuantityRange.from(0, 2000);
      case DISTANCE -> QuantityRange.from(0, 3000);
      case ELEVATION -> QuantityRange.from(-500, 9000);
      case SPEED -> QuantityRange.from(0, 400);
      case CONSUMPTION -> QuantityRange.from(20, 2000);
      case PRESSURE -> QuantityRange.from(500, 12_000);
      case MASS -> QuantityRange.from(0, 10_000);
      case AREA -> QuantityRange.from(0.1, 10);
      case DENSITY -> QuantityRange.above(0, 2);
      case ROAD_PER_TIME, MONEY -> QuantityRange.from(0, 1000);
      case ANGLE -> QuantityRange.from(-360, 360);
      case ENERGY_PER_SHARE -> QuantityRange.above(0, 20);
      case POWER_PER_SHARE -> QuantityRange.from(-1000, 1000);
      case RATE -> QuantityRange.from(0, 100);
      case FACTOR -> QuantityRange.from(0.8, 1.2);
    };
  }
}
