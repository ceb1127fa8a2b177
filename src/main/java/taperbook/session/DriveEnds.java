package taperbook.session;

import java.util.List;
import java.util.Optional;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;

/**
 * The state of charge that a car displays at the start and at the end of a drive.
 *
 * <p>Both ends are read from the same display, so that both are rounded in the same way: where it
 * is not known which, the offset is common to both and cancels in their difference. It does not
 * cancel where an end is full or empty, as no charge lies beyond.
 *
 * @param start state of charge at the start, give or take half a step, %
 * @param end state of charge at the end, give or take half a step, %
 * @param rounding how the display rounds
 */
public record DriveEnds(Estimate start, Estimate end, DisplayRounding rounding) {
  private static final double FULL = 100;

  /**
   * Share of drives that begin exactly full, of those that begin with a full battery on display: a
   * range test begins where the charge has ended by itself, and some begin just below. Common
   * practice, no source.
   */
  private static final double EXACTLY_FULL = 0.5;

  /** The ends of a drive; empty unless both are known. */
  public static Optional<DriveEnds> of(Facts<RangeItem> facts, DisplayRounding rounding) {
    Optional<Estimate> start = facts.amount(RangeItem.START_SOC);
    Optional<Estimate> end = facts.amount(RangeItem.END_SOC);
    return start.isPresent() && end.isPresent()
        ? Optional.of(new DriveEnds(start.get(), end.get(), rounding))
        : Optional.empty();
  }

  /** The true states of charge that the display shows as it did at the start, %. */
  public Interval starts(DisplayRounding way) {
    return allowed(start, way);
  }

  /** The true states of charge that the display shows as it did at the end, %. */
  public Interval ends(DisplayRounding way) {
    return allowed(end, way);
  }

  private static Interval allowed(Estimate shown, DisplayRounding way) {
    Interval any = way.allows(shown.value(), shown.bounds().width());
    return new Interval(
        Math.min(FULL, Math.max(0, any.low())), Math.min(FULL, Math.max(0, any.high())));
  }

  /**
   * How likely the drive began exactly full: 0 unless the display showed that. Of a display that is
   * not declared, the one that rounds up counts as full. With half of its draws below, so few lie
   * near the upper end that the shortest interval leaves it out, and holds the truth in 74 % of
   * such drives.
   */
  public double fullShare(DisplayRounding way) {
    if (start.value() < FULL) {
      return 0;
    }
    boolean assumed = rounding == DisplayRounding.NOT_KNOWN && way == DisplayRounding.UP;
    return assumed ? 1 : EXACTLY_FULL;
  }

  /**
   * The state of charge used, %: the mean of what is drawn for it (JCGM 101:2008, 7.6), within all
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
