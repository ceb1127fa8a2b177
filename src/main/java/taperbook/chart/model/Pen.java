package taperbook.chart.model;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;

/**
 * How a line of a chart is drawn. Pens of sessions that share a chart differ primarily in dash and
 * marker, and also in colour.
 */
public enum Pen {
  /** The only curve of a chart: a dot for each reading, and a visible band. */
  SINGLE(Palette.CURVE, Palette.GAP, Marker.DOT),
  /** A computed curve: a band, no markers. */
  COMPUTED(Palette.CURVE, Palette.GAP, Marker.DOT),
  /** The first of several sessions, the reported one. */
  FIRST(Palette.SESSIONS.get(0), Marker.DOT),
  /** The second session. */
  SECOND(Palette.SESSIONS.get(1), Marker.SQUARE, 4.2, 1.6),
  /** The third session. */
  THIRD(Palette.SESSIONS.get(2), Marker.TRIANGLE, 6, 1.5, 1.3, 1.5),
  /** The fourth session. */
  FOURTH(Palette.SESSIONS.get(3), Marker.DIAMOND, 1.4, 1.4),
  /** The fifth session. */
  FIFTH(Palette.SESSIONS.get(4), Marker.CROSS, 2.2, 3),
  /** The sixth session. */
  SIXTH(Palette.SESSIONS.get(5), Marker.WEDGE, 8, 1.6, 1.3, 1.6, 1.3, 1.6);

  private static final List<Pen> OF_SESSIONS = List.of(FIRST, SECOND, THIRD, FOURTH, FIFTH, SIXTH);

  private final Color color;
  private final Color gapColor;
  private final Marker marker;
  private final double[] dash;

  Pen(Color color, Marker marker, double... dash) {
    this(color, color, marker, dash);
  }

  Pen(Color color, Color gapColor, Marker marker, double... dash) {
    this.color = color;
    this.gapColor = gapColor;
    this.marker = marker;
    this.dash = dash.clone();
  }

  /** Returns the pen of a session by its index, 0 for the reported one, at most 5. */
  public static Pen ofSession(int index) {
    return OF_SESSIONS.get(index);
  }

  /** Returns true if the pen is one of several in a chart. */
  public boolean isOneOfSeveral() {
    return OF_SESSIONS.contains(this);
  }

  public boolean isDashed() {
    return dash.length > 0;
  }

  /** Returns true if readings are marked. */
  public boolean marksReadings() {
    return this != COMPUTED;
  }

  public Color color() {
    return color;
  }

  public Color gapColor() {
    return gapColor;
  }

  public Marker marker() {
    return marker;
  }

  /** Returns the stroke without wide gaps. */
  public BasicStroke line(ChartStyle style) {
    return isDashed() ? style.dashed(1, dash) : style.curve();
  }

  /** Returns the stroke over a wide gap: dashed, or thinner if dashes distinguish the lines. */
  public BasicStroke gap(ChartStyle style) {
    if (!isOneOfSeveral()) {
      return style.dashed(0.75, 3, 2);
    }
    return isDashed() ? style.dashed(0.4, dash) : style.solid(0.4 * style.weights().curve());
  }
}
