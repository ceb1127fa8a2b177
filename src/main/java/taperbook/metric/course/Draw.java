package taperbook.metric.course;

/**
 * One joint draw of a session and a drive that is consistent with the readings.
 *
 * @param course power, energy and charge of the session
 * @param drive the range test
 * @param displayOffset offset of the charge at which a display first shows a figure above the true
 *     charge, %: half a step for a display that rounds to nearest, zero for one that truncates
 * @param place place within a stretch of an event whose time is otherwise unknown, from 0 to 1
 */
public record Draw(Course course, Drive drive, double displayOffset, double place) {
  /** Returns the true charge at a time, %. */
  public double trueChargeAt(double second) {
    return course.chargeAt(second) - displayOffset;
  }

  /**
   * Returns the time between the display first showing two charges, s; never negative. Extrapolates
   * past the ends of the session at its mean rate there.
   */
  public double seconds(double fromPercent, double toPercent) {
    return Math.max(0, course.timeOfCharge(toPercent) - course.timeOfCharge(fromPercent));
  }

  /** Returns the share of a full battery that a distance takes on the driven range, %. */
  public double share(double kilometres) {
    return 100 * kilometres / drive.fullRange();
  }

  /** Returns the share of a full battery that a distance takes on the rated range, %. */
  public double ratedShare(double kilometres) {
    return 100 * kilometres / drive.ratedRange();
  }
}
