package taperbook.metric.fit;

import taperbook.format.Labels;

/** What a segment of a charging curve is. */
public enum SegmentKind {
  /** Rises from the start of the session on: the battery warms or the power ramps up. */
  WARM_UP("segment.warm_up"),
  /** Rises later in the session. */
  RISE("segment.rise"),
  /** Neither rises nor falls by more than a little. */
  PLATEAU("segment.plateau"),
  /** Falls. */
  TAPER("segment.taper"),
  /** Falls steeply within a few per cent. */
  STEP("segment.step");

  private final String label;

  SegmentKind(String label) {
    this.label = label;
  }

  /** The kind in words. */
  public String words() {
    return Labels.of(label);
  }
}
