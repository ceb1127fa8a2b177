package taperbook.metric.fit;

import taperbook.format.Labels;

/** The kind of a segment of a charging curve. */
public enum SegmentKind {
  /** Rises from the start of the session: the battery warms up or the power ramps up. */
  WARM_UP("segment.warm_up"),
  /** Rises later in the session. */
  RISE("segment.rise"),
  /** Changes only a little. */
  PLATEAU("segment.plateau"),
  /** Falls. */
  TAPER("segment.taper"),
  /** Falls steeply within a few per cent. */
  STEP("segment.step");

  private final String label;

  SegmentKind(String label) {
    this.label = label;
  }

  /** Returns the kind as text. */
  public String words() {
    return Labels.of(label);
  }
}
