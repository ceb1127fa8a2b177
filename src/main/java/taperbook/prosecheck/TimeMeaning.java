package taperbook.prosecheck;

import java.util.Optional;
import java.util.regex.Pattern;
import taperbook.quantity.Quantity;
import taperbook.quantity.WantedDistance;
import taperbook.session.ConditionItem;

/**
 * Resolves which time is meant: a hold, a window, the time to a mark or a distance, the session.
 */
final class TimeMeaning {
  private static final Pattern AFTER =
      Pattern.compile("(?i)\\b(?:after|in|within|took|takes|need\\w*|was|:)");
  private static final Pattern WITHIN =
      Pattern.compile("(?i)\\b(?:within|close to|near|around)\\b");
  private static final Pattern UNTIL =
      Pattern.compile("(?i)\\b(?:to|until|till|before|at|showed|for)\\b");

  private final Statement s;
  private final Targets targets;

  private TimeMeaning(Statement s) {
    this.s = s;
    this.targets = s.targets();
  }

  static Optional<Meaning> of(Statement s) {
    TimeMeaning time = new TimeMeaning(s);
    if (s.writtenAsClock() && s.follows(Cues.CLOCK_BEFORE)) {
      return Optional.empty();
    }
    return time.hold().or(time::peakReached).or(time::preconditioning).or(time::charging);
  }

  private Optional<Meaning> hold() {
    boolean holdDuration = s.follows(Cues.HELD_FOR);
    if (!(holdDuration || s.follows(Cues.PLATEAU_LASTS))) {
      return Optional.empty();
    }
    Optional<Target> peak = targets.number("peak_power");
    boolean peakMeant = s.matchesInSentence(Cues.PEAK) || s.matchesInSentence(Cues.PEAK_WORD);
    // "above 100 kW for 20 minutes" is a different hold than that of the peak.
    boolean otherPower =
        s.powers()
            .anyMatch(
                a ->
                    a.hedge() == Hedge.MORE
                        || (!peakMeant && peak.filter(p -> p.agrees(a)).isEmpty()));
    boolean ofPower = s.powers().findAny().isPresent() || peakMeant || !holdDuration;
    if (otherPower || !ofPower || s.matches(Cues.PEOPLE_STAY)) {
      return Optional.empty();
    }
    Optional<Target> hold = targets.number("peak_hold_time");
    boolean within = s.matches(WITHIN) || s.others(Quantity.SHARE).anyMatch(a -> !a.isRange());
    return within ? Meaning.perhaps(hold) : Meaning.surely(hold);
  }

  private Optional<Meaning> peakReached() {
    return s.follows(Cues.PEAK_AFTER)
        ? Meaning.surely(targets.number("peak_reached_time"))
        : Optional.empty();
  }

  private Optional<Meaning> preconditioning() {
    return s.matches(Cues.PRECONDITIONING)
        ? Meaning.perhaps(targets.condition(ConditionItem.PRECONDITIONING_TIME))
        : Optional.empty();
  }

  private Optional<Meaning> charging() {
    boolean driving = s.matches(Cues.DRIVE) && !s.matches(Cues.RANGE_DRIVEN);
    if (s.matches(Cues.NOT_A_WINDOW_TIME) || s.matches(Cues.PASTIME) || driving) {
      return Optional.empty();
    }
    boolean distance = s.has(Quantity.DISTANCE);
    boolean share = s.has(Quantity.SHARE);
    if (distance) {
      return share ? Optional.empty() : s.distance().flatMap(this::toAdd);
    }
    if (share) {
      return s.window().isPresent()
          ? s.window().flatMap(this::window)
          : s.mark().flatMap(this::mark);
    }
    return session();
  }

  private Optional<Meaning> toAdd(Amount written) {
    boolean driven =
        Cues.DISTANCE_IS_DRIVEN.matcher(s.leftOf(written)).find()
            || Cues.DRIVEN_BEHIND.matcher(s.rightOf(written)).find();
    if (driven || !s.matches(Cues.BUYS)) {
      return Optional.empty();
    }
    WantedDistance distance = targets.wanted(written).orElseThrow();
    boolean rated = s.matches(Cues.RATED);
    Optional<Target> time = targets.timeToAdd(distance, rated);
    return rated ? Meaning.surely(time) : Meaning.surely(time, targets.timeToAddByEnergy(distance));
  }

  private Optional<Meaning> window(Amount window) {
    boolean whole =
        window.low() == Math.rint(window.low()) && window.high() == Math.rint(window.high());
    return whole && s.others(Quantity.SHARE).count() == 1
        ? Meaning.surely(
            targets.number("time_soc_" + (int) window.low() + "_" + (int) window.high()))
        : Optional.empty();
  }

  private Optional<Meaning> mark(Amount mark) {
    if (Cues.FROM_MARK.matcher(s.leftOf(mark)).find() || s.matches(Cues.NEXT_TO_ROAD)) {
      return Optional.empty();
    }
    String between = s.between(mark);
    boolean linked =
        s.comesBefore(mark) ? UNTIL.matcher(between).find() : AFTER.matcher(between).find();
    Optional<Target> time = targets.number("time_to_soc_" + mark.wholePercent().orElseThrow());
    // "80 % in 31 minutes" may count from the lower edge of the default window.
    Optional<Target> fromWindow =
        targets.plan().wishes().windows().stream()
            .filter(w -> w.to() == mark.wholePercent().orElseThrow())
            .findFirst()
            .flatMap(w -> targets.number("time_soc_" + w.idPart()));
    return linked ? Meaning.surely(time, fromWindow) : Optional.empty();
  }

  private Optional<Meaning> session() {
    Optional<Target> time = targets.number("session_time");
    if (s.matches(Cues.SESSION)) {
      return Meaning.surely(time);
    }
    return s.matches(Cues.STOP) ? Meaning.perhaps(time) : Optional.empty();
  }
}
