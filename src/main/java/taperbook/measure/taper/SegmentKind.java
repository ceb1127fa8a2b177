package taperbook.measure.taper;

/** What a segment of a charging curve is. */
public enum SegmentKind {
  /** Rises from the start of the session on: the battery warms or the power ramps up. */
  WARM_UP("warm-up climb"),
  /** Rises later in the session. */
  RISE("rise"),
  /** Neither rises nor falls by more than a little. */
  PLATEAU("plateau"),
  /** Falls. */
  TAPER("taper"),
  /** Falls steeply within a few per cent. */
  STEP("step down");

  private final String words;

  SegmentKind(String words) {
    this.words = words;
  }

  /** The kind in words. */
  public String words() {
    return words;
  }
}
