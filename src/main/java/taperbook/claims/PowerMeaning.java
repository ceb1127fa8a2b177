package taperbook.claims;

import java.util.Optional;
import taperbook.model.ConditionItem;

/** Which power is meant: the peak, an average, the power at a mark, the station's. */
final class PowerMeaning {
  private final Statement s;
  private final Targets targets;

  private PowerMeaning(Statement s) {
    this.s = s;
    this.targets = s.targets();
  }

  static Optional<Meaning> of(Statement s) {
    PowerMeaning power = new PowerMeaning(s);
    if (s.precedes(Cues.STATION_BEHIND) || s.says(Cues.STATION_RATED)) {
      return Meaning.surely(s.targets().condition(ConditionItem.STATION_RATED_POWER));
    }
    if (s.says(Cues.AVERAGE)) {
      return s.window().flatMap(power::average);
    }
    return power.atMark().or(power::peak);
  }

  private Optional<Meaning> average(Amount window) {
    String part = (int) window.low() + "_" + (int) window.high();
    Optional<Target> overTime = targets.number("average_power_" + part);
    Optional<Target> overSoc = targets.number("soc_average_power_" + part);
    if (s.says(Cues.PEAK_WORD)) {
      return Optional.empty();
    }
    return s.says(Cues.OVER_SOC) || s.says(Cues.SOC_AVERAGE_PAST)
        ? Meaning.surely(overSoc)
        : Meaning.surely(overTime, overSoc);
  }

  private Optional<Meaning> atMark() {
    if (s.says(Cues.PEAK_WORD) || s.says(Cues.HOLD) || !s.says(Cues.CHANGED_AT_MARK)) {
      return Optional.empty();
    }
    return s.mark()
        .filter(m -> Cues.AT_MARK.matcher(s.leftOf(m)).find())
        .flatMap(
            m -> Meaning.surely(targets.number("power_at_soc_" + m.wholePercent().orElseThrow())));
  }

  private Optional<Meaning> peak() {
    Optional<Target> peak = targets.number("peak_power");
    if (s.window().isPresent() && !s.says(Cues.PEAK_WORD)) {
      return Optional.empty();
    }
    if (s.says(Cues.PEAK)) {
      return Meaning.surely(peak);
    }
    // "held 100 kW for 20 minutes" may be true of a lower power as well.
    return s.follows(Cues.HELD_BEFORE) ? Meaning.perhaps(peak) : Optional.empty();
  }
}
