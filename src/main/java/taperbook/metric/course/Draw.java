package taperbook.metric.course;

/**
 * A session and a drive as the readings allow them, drawn together.
 *
 * @param course power, energy and charge of the session
 * @param drive the range test
 * @param displayOffset how far the charge that a display first shows lies above the true charge, %:
 *     half a step for a display that rounds to nearest, nothing for one that truncates
 * @param place where in a stretch something happened of which no more is known, from 0 to 1
 */
public record Draw(Course course, Drive drive, double displayOffset, double place) {
  /** True charge at a time, %. */
  public double trueChargeAt(double second) {
    return course.chargeAt(second) - displayOffset;
  }

  /**
   * Time from the display first showing one charge to its first showing another, s; never negative.
   * Past the ends of the session its mean rate there is carried on.
   */
  public double seconds(double fromPercent, double toPercent) {
    return Math.max(0, course.timeOfCharge(toPercent) - course.timeOfCharge(fromPercent));
  }

  /** Share of a full battery that a distance takes on the driven range, %. */
  public double share(double kilometres) {
    return 100 * kilometres / drive.fullRange();
  }

  /** Share of a full battery that a distance takes on the rated range, %. */
  public double ratedShare(double kilometres) {
    return 100 * kilometres / drive.ratedRange();
  }
}
