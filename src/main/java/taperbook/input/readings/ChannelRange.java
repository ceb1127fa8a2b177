package taperbook.input.readings;

import taperbook.input.cell.QuantityRange;
import taperbook.session.Channel;

/** Plausible ranges of channels; wide, to detect only typing errors and wrong units. */
public final class ChannelRange {
  private ChannelRange() {}

  public static QuantityRange of(Channel channel) {
    return switch (channel) {
      case SOC -> QuantityRange.from(0, 100);
      case POWER, STATION_POWER -> QuantityRange.from(-50, 4000);
      case ENERGY_ADDED, STATION_ENERGY -> QuantityRange.from(-1, 1000);
      case BATTERY_TEMPERATURE -> QuantityRange.from(-60, 120);
      case VOLTAGE -> QuantityRange.from(0, 2000);
      case CURRENT -> QuantityRange.from(-1000, 4000);
      case RANGE_SHOWN -> QuantityRange.from(0, 3000);
    };
  }

  /** Returns the range of a car's channel, except at the most powerful stations. */
  static QuantityRange usual(Channel channel) {
    return switch (channel) {
      case POWER, STATION_POWER, CURRENT -> QuantityRange.from(-1000, 1000);
      default -> of(channel);
    };
  }
}
