package taperbook.prosecheck;

import java.util.Optional;
import java.util.regex.Pattern;
import taperbook.quantity.Quantity;
import taperbook.session.ConditionItem;

/** Resolves which power is meant: the peak, an average, the power at a mark, the station's. */
final class PowerMeaning {
  private static final Pattern THIS_ONE = Pattern.compile("(?i)\\b(?:this|that|our)\\s*$");

  private final Statement s;
  private final Targets targets;

  private PowerMeaning(Statement s) {
    this.s = s;
    this.targets = s.targets();
  }

  static Optional<Meaning> of(Statement s) {
    PowerMeaning power = new PowerMeaning(s);
    if (s.precedes(Cues.STATION_BEHIND) || s.matches(Cues.STATION_RATED)) {
      return power.station();
    }
    if (s.matches(Cues.AVERAGE)) {
      return s.window().flatMap(power::average);
    }
    return s.markedByPosition() && !s.matchesNearby(Cues.PEAK_WORD) ? power.atMark() : power.peak();
  }

  /**
   * With an indefinite article any station may be meant; with a name or a demonstrative it is this
   * one.
   */
  private Optional<Meaning> station() {
    Optional<Target> rated = targets.condition(ConditionItem.STATION_RATED_POWER);
    boolean pointedAt = s.matches(Cues.STATION_RATED) || s.namesPlace() || s.follows(THIS_ONE);
    return pointedAt ? Meaning.surely(rated) : Meaning.perhaps(rated);
  }

  private Optional<Meaning> average(Amount window) {
    String part = (int) window.low() + "_" + (int) window.high();
    Optional<Target> overTime = targets.number("average_power_" + part);
    Optional<Target> overSoc = targets.number("soc_average_power_" + part);
    if (s.matches(Cues.PEAK_WORD)) {
      return Optional.empty();
    }
    return s.matches(Cues.OVER_SOC) || s.matches(Cues.SOC_AVERAGE_PAST)
        ? Meaning.surely(overSoc)
        : Meaning.surely(overTime, overSoc);
  }

  private Optional<Meaning> atMark() {
    if (s.matches(Cues.HOLD) || !s.matches(Cues.CHANGED_AT_MARK)) {
      return Optional.empty();
    }
    return s.mark()
        .flatMap(
            m -> Meaning.surely(targets.number("power_at_soc_" + m.wholePercent().orElseThrow())));
  }

  private Optional<Meaning> peak() {
    Optional<Target> peak = targets.number("peak_power");
    if (s.window().isPresent() && !s.matches(Cues.PEAK_WORD)) {
      return Optional.empty();
    }
    if (s.matches(Cues.NOT_THE_PEAK)
        || s.follows(Cues.FALLING)
        || (s.has(Quantity.SHARE) && !s.matchesNearby(Cues.PEAK_WORD))) {
      return Optional.empty();
    }
    if (s.matchesNearby(Cues.PEAK)) {
      boolean doubtful = s.matches(Cues.AT_A_STATION) || s.own().hedge() == Hedge.LESS;
      return doubtful ? Meaning.perhaps(peak) : Meaning.surely(peak);
    }
    if (s.follows(Cues.ROSE_TO)) {
      return s.isAlone() ? Meaning.surely(peak) : Meaning.perhaps(peak);
    }
    // "held 100 kW for 20 minutes" may also be true of a lower power.
    boolean plain = s.own().hedge() == Hedge.NONE;
    return plain && s.follows(Cues.HELD_BEFORE) ? Meaning.perhaps(peak) : Optional.empty();
  }
}
