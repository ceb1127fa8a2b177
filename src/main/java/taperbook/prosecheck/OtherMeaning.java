package taperbook.prosecheck;

import java.util.Optional;
import taperbook.quantity.Quantity;
import taperbook.session.ConditionItem;
import taperbook.session.RangeItem;

/** Resolves which energy, consumption, distance, temperature or speed is meant. */
final class OtherMeaning {
  private final Statement s;
  private final Targets targets;

  private OtherMeaning(Statement s) {
    this.s = s;
    this.targets = s.targets();
  }

  static Optional<Meaning> of(Statement s) {
    OtherMeaning other = new OtherMeaning(s);
    return switch (s.own().unit().quantity()) {
      case ENERGY -> other.energy();
      case CONSUMPTION -> other.consumption();
      case DISTANCE -> other.distance();
      case TEMPERATURE -> other.temperature();
      case SPEED -> other.speed();
      default -> Optional.empty();
    };
  }

  private Optional<Meaning> energy() {
    if (s.matches(Cues.USABLE)) {
      return Meaning.surely(targets.condition(ConditionItem.BATTERY_USABLE_ENERGY));
    }
    if (s.matches(Cues.FULL)) {
      return Meaning.perhaps(
          targets.number("implied_full_energy"), targets.number("implied_full_energy_fitted"));
    }
    if (s.matches(Cues.ON_THE_DRIVE) && s.matches(Cues.USED)) {
      return Meaning.perhaps(targets.drive(RangeItem.ENERGY_USED));
    }
    Optional<Target> all = targets.number("energy_added");
    if (!s.matches(Cues.ADDED) || s.matches(Cues.METERED)) {
      return Optional.empty();
    }
    if (s.window().isPresent()) {
      Amount w = s.window().get();
      return Meaning.surely(targets.number("energy_soc_" + (int) w.low() + "_" + (int) w.high()));
    }
    boolean part =
        s.has(Quantity.SHARE)
            || s.has(Quantity.TIME)
            || s.has(Quantity.DISTANCE)
            || s.matchesInSentence(Cues.IN_PART);
    return part ? Meaning.perhaps(all) : Meaning.surely(all);
  }

  private Optional<Meaning> consumption() {
    Optional<Target> consumption = targets.number("consumption");
    if (s.matches(Cues.DISPLAYED)) {
      return Meaning.perhaps(targets.drive(RangeItem.CONSUMPTION_DISPLAYED), consumption);
    }
    boolean otherwise =
        s.has(Quantity.SPEED) || s.matches(Cues.OTHER_ROADS) || s.matches(Cues.LEG) || !s.isAlone();
    return otherwise ? Meaning.perhaps(consumption) : Meaning.surely(consumption);
  }

  private Optional<Meaning> distance() {
    if (s.matches(Cues.ODOMETER)) {
      Optional<Target> odometer = targets.condition(ConditionItem.ODOMETER);
      return s.matches(Cues.ON_THE_DRIVE) || s.matches(Cues.LEG)
          ? Meaning.perhaps(odometer, targets.drive(RangeItem.DISTANCE))
          : Meaning.surely(odometer);
    }
    Optional<Target> full = targets.number("driven_range_full");
    if (s.matches(Cues.RANGE) && targets.wanted(s.own()).isEmpty()) {
      boolean other =
          s.matches(Cues.RANGE_LEFT)
              || s.matches(Cues.DISPLAYED)
              || s.matches(Cues.LEG)
              || s.has(Quantity.SHARE);
      boolean surely =
          s.matches(Cues.WHOLE_RANGE) && !other && !s.has(Quantity.TIME) && s.isAlone();
      return surely ? Meaning.surely(full) : Meaning.perhaps(full);
    }
    return s.matches(Cues.ON_THE_DRIVE)
        ? Meaning.perhaps(targets.drive(RangeItem.DISTANCE))
        : Optional.empty();
  }

  private Optional<Meaning> temperature() {
    if (s.matches(Cues.BATTERY)) {
      Optional<Target> start = targets.condition(ConditionItem.BATTERY_TEMPERATURE_AT_START);
      boolean atStart = s.matches(Cues.START) && !s.matches(Cues.HEATING) && s.isAlone();
      return atStart ? Meaning.surely(start) : Meaning.perhaps(start);
    }
    if (!s.matches(Cues.AIR) || s.matches(Cues.CABIN)) {
      return Optional.empty();
    }
    Optional<Target> here = targets.condition(ConditionItem.AMBIENT_TEMPERATURE);
    Optional<Target> there = targets.drive(RangeItem.AMBIENT_TEMPERATURE);
    return s.matches(Cues.OTHER_HOUR) || !s.isAlone()
        ? Meaning.perhaps(here, there)
        : Meaning.surely(here, there);
  }

  private Optional<Meaning> speed() {
    Optional<Target> target = targets.drive(RangeItem.TARGET_SPEED);
    Optional<Target> average = targets.drive(RangeItem.AVERAGE_SPEED);
    return s.matches(Cues.AVERAGE) ? Meaning.perhaps(average) : Meaning.perhaps(target, average);
  }
}
