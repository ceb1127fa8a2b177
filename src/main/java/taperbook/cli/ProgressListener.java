package taperbook.cli;

/** Hears how far the making of a report has come. */
public interface ProgressListener {
  /** Nobody listens. */
  ProgressListener UNHEARD = (share, what) -> {};

  /**
   * A step begins.
   *
   * @param share how much of the report is done, 0 to 1
   * @param what the step, such as {@code measuring}
   */
  void begin(double share, String what);
}
