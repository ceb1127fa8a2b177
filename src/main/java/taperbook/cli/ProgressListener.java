package taperbook.cli;

/** Receives progress while a report is built. */
public interface ProgressListener {
  /** Ignores progress. */
  ProgressListener NONE = (share, what) -> {};

  /**
   * Called when a step begins.
   *
   * @param share share of the report that is done, 0 to 1
   * @param what the step, such as {@code measuring}
   */
  void begin(double share, String what);
}
