package taperbook.prosecheck;

import java.util.Optional;
import taperbook.session.RangeItem;

/** Resolves which state of charge is meant: the start, the end, or the edges of the hold. */
final class SocMeaning {
  private SocMeaning() {}

  static Optional<Meaning> of(Statement s) {
    Targets targets = s.targets();
    boolean doubtful =
        s.matches(Cues.ON_THE_DRIVE)
            || s.matches(Cues.ABOUT_THE_CURVE)
            || !s.matches(Cues.ABOUT_CHARGING);
    if (s.follows(Cues.HELD_UNTIL)) {
      return Meaning.surely(targets.number("peak_hold_soc_to"));
    }
    if (s.follows(Cues.HELD_FROM)) {
      return Meaning.surely(targets.number("peak_hold_soc_from"));
    }
    if (s.follows(Cues.PLUGGED_IN_AT)) {
      Optional<Target> start = targets.number("start_soc");
      return doubtful
          ? Meaning.perhaps(start, targets.drive(RangeItem.START_SOC))
          : Meaning.surely(start);
    }
    if (s.follows(Cues.UNPLUGGED_AT)) {
      return doubtful
          ? Meaning.perhaps(targets.number("end_soc"), targets.drive(RangeItem.END_SOC))
          : Meaning.surely(targets.number("end_soc"));
    }
    return s.follows(Cues.ARRIVED_AT)
        ? Meaning.perhaps(targets.number("start_soc"), targets.drive(RangeItem.END_SOC))
        : Optional.empty();
  }

  /** Returns an edge of the hold if the words refer a window to it. */
  static Optional<Meaning> ofEdge(Statement s, boolean first) {
    return s.matches(Cues.HOLD) && s.matches(Cues.PEAK_WORD)
        ? Meaning.surely(s.targets().number(first ? "peak_hold_soc_from" : "peak_hold_soc_to"))
        : Optional.empty();
  }
}
