package taperbook.session;

import java.util.List;
import java.util.Optional;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;

/**
 * The state of charge that a car displays at the start and at the end of a drive.
 *
 * <p>Both ends are read from the same display and are therefore rounded in the same way. If the
 * rounding is unknown, its offset is common to both ends and cancels in their difference, except
 * where an end is full or empty, because no charge exists beyond these limits.
 *
 * @param start state of charge at the start, plus or minus half a step, %
 * @param end state of charge at the end, plus or minus half a step, %
 * @param rounding how the display rounds
 */
public record DriveEnds(Estimate start, Estimate end, DisplayRounding rounding) {
  private static final double FULL = 100;

  /**
   * Share of drives that begin exactly full, among those that begin with a full battery on the
   * display: most range tests begin after charging has ended automatically, and some begin just
   * below full. Common practice, no source.
   */
  private static final double EXACTLY_FULL = 0.5;

  /** Returns the ends of a drive; empty unless both are known. */
  public static Optional<DriveEnds> of(Facts<RangeItem> facts, DisplayRounding rounding) {
    Optional<Estimate> start = facts.amount(RangeItem.START_SOC);
    Optional<Estimate> end = facts.amount(RangeItem.END_SOC);
    return start.isPresent() && end.isPresent()
        ? Optional.of(new DriveEnds(start.get(), end.get(), rounding))
        : Optional.empty();
  }

  /** Returns the true states of charge consistent with the display at the start, %. */
  public Interval starts(DisplayRounding way) {
    return allowed(start, way);
  }

  /** Returns the true states of charge consistent with the display at the end, %. */
  public Interval ends(DisplayRounding way) {
    return allowed(end, way);
  }

  private static Interval allowed(Estimate shown, DisplayRounding way) {
    Interval any = way.allows(shown.value(), shown.bounds().width());
    return new Interval(
        Math.min(FULL, Math.max(0, any.low())), Math.min(FULL, Math.max(0, any.high())));
  }

  /**
   * Returns the probability that the drive began exactly full: 0 unless the display showed full.
   * For an undeclared rounding, a display that rounds up counts as full: with half of its draws
   * below full, so few draws lie near the upper end that the shortest interval would leave it out
   * and contain the true value in only 74 % of such drives.
   */
  public double fullShare(DisplayRounding way) {
    if (start.value() < FULL) {
      return 0;
    }
    boolean assumed = rounding == DisplayRounding.NOT_KNOWN && way == DisplayRounding.UP;
    return assumed ? 1 : EXACTLY_FULL;
  }

  /**
   * Returns the state of charge used: the mean of its draws (JCGM 101:2008, 7.6), within all values
   * that the display allows.
   */
  public Estimate used() {
    List<DisplayRounding> ways = rounding.possible();
    double mean = 0;
    Interval bounds = starts(ways.get(0)).minus(ends(ways.get(0)));
    for (DisplayRounding way : ways) {
      double full = fullShare(way);
      double from = full * FULL + (1 - full) * starts(way).middle();
      mean += (from - ends(way).middle()) / ways.size();
      bounds = bounds.hull(starts(way).minus(ends(way)));
    }
    return new Estimate(mean, bounds.hull(mean));
  }
}
