package taperbook.chart.model;

import java.awt.BasicStroke;

/**
 * The sizes of one rendering of a chart, in its own pixels.
 *
 * @param width width of the picture
 * @param height height of the picture
 * @param edges what stays free on all sides
 * @param type sizes of text
 * @param weights widths of lines and sizes of dots
 * @param words what of the figure's words stands inside the picture
 * @param ground what the picture lies on
 */
public record ChartStyle(
    int width,
    int height,
    Edges edges,
    Type type,
    Weights weights,
    Words words,
    Background ground) {
  /** What of a figure's words stands inside the picture. */
  public enum Words {
    /** All of them. */
    ALL,
    /** All around the plot, but at most three labels in it. */
    FEW_LABELS,
    /** As few as a thumbnail bears. */
    FEW
  }

  /** What stays free on the left and right, and above and below. */
  public record Edges(double across, double down) {}

  /**
   * Sizes of text.
   *
   * @param tick numbers along the axes, and the credit
   * @param label labels in the plot, and the subtitle
   * @param title title of the picture
   * @param slack factor on measured widths: where the reader's program sets the text, its font may
   *     run wider than ours
   */
  public record Type(double tick, double label, double title, double slack) {}

  /**
   * Widths of lines and sizes of dots.
   *
   * @param curve width of the curve
   * @param thin width of axes and grid lines
   * @param mark width of mark lines
   * @param dot radius of a reading
   * @param markDot radius of a mark's dot
   */
  public record Weights(double curve, double thin, double mark, double dot, double markDot) {}

  /**
   * For the page: 720 x 405, printed 150 mm wide or more, so that a pixel is at least 0.59 pt and
   * the smallest text 8 pt.
   */
  public static ChartStyle print() {
    return new ChartStyle(
        720,
        405,
        new Edges(10, 8),
        new Type(13.7, 14, 19, 1.06),
        new Weights(2.4, 1, 1.3, 3.1, 4.6),
        Words.ALL,
        Background.PAPER);
  }

  /** For paper beside words: printed 118 mm wide, so that a pixel is 0.669 pt. */
  public static ChartStyle column() {
    return new ChartStyle(
        500,
        281,
        new Edges(4, 5),
        new Type(12.1, 12.3, 15, 1.06),
        new Weights(2.2, 0.9, 1.2, 2.7, 4),
        Words.ALL,
        Background.PAPER);
  }

  /** For a narrow screen, where a pixel of the picture is a bit less than one of the screen. */
  public static ChartStyle narrow() {
    return new ChartStyle(
        360,
        440,
        new Edges(8, 8),
        new Type(12.8, 13, 17, 1.06),
        new Weights(2, 0.8, 1.1, 2.4, 3.6),
        Words.ALL,
        Background.PAPER);
  }

  /** For film: 1920 x 1080, a twentieth free on each side, no text below 48 pixels. */
  public static ChartStyle film() {
    return new ChartStyle(
        1920,
        1080,
        new Edges(96, 54),
        new Type(48, 48, 66, 1.0),
        new Weights(8, 2, 4, 9, 14),
        Words.FEW_LABELS,
        Background.PAPER);
  }

  /** For a telephone: 1080 wide and so high, a twentieth free, no text below 36 pixels. */
  public static ChartStyle tall(int height) {
    return new ChartStyle(
        1080,
        height,
        new Edges(54, 0.05 * height),
        new Type(38, 40, 60, 1.0),
        new Weights(8, 2, 4, 8, 13),
        Words.FEW_LABELS,
        Background.PAPER);
  }

  /** For a thumbnail: 320 x 180, no text below 16 pixels. */
  public static ChartStyle small() {
    return new ChartStyle(
        320,
        180,
        new Edges(8, 6),
        new Type(16, 17, 17, 1.0),
        new Weights(3.2, 1, 1.4, 2.6, 4),
        Words.FEW,
        Background.PAPER);
  }

  /** This style on another ground. */
  public ChartStyle on(Background other) {
    return new ChartStyle(width, height, edges, type, weights, words, other);
  }

  /** True if the picture is much wider than high. */
  public boolean isWide() {
    return width > 1.5 * height;
  }

  /** True if the picture has room for a few words only. */
  public boolean isSmall() {
    return words == Words.FEW;
  }

  /** Gap between a mark and its label. */
  public double gap() {
    return type.label() * 0.6;
  }

  /** Distance between the baselines of a label's lines. */
  public double leading() {
    return type.label() * 1.25;
  }

  /** A plain line. */
  public BasicStroke solid(double lineWidth) {
    return new BasicStroke((float) lineWidth, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
  }

  /** The curve where readings are close enough. */
  public BasicStroke curve() {
    return new BasicStroke((float) weights.curve(), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  }

  /** The curve over a wide gap. */
  public BasicStroke gapDash() {
    float unit = (float) weights.curve();
    return new BasicStroke(
        unit * 0.75f,
        BasicStroke.CAP_BUTT,
        BasicStroke.JOIN_ROUND,
        10,
        new float[] {3 * unit, 2 * unit},
        0);
  }

  /** Guides from an axis to a mark. */
  public BasicStroke dotted() {
    float unit = (float) weights.mark();
    return new BasicStroke(
        unit, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 10, new float[] {0.1f, 3 * unit}, 0);
  }
}
