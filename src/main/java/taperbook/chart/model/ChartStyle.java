package taperbook.chart.model;

import java.awt.BasicStroke;
import java.util.stream.DoubleStream;

/**
 * The sizes of one rendering of a chart, in its own pixels.
 *
 * @param width width of the picture
 * @param height height of the picture
 * @param edges margins on all sides
 * @param type sizes of text
 * @param weights widths of lines and sizes of dots
 * @param words amount of text inside the picture
 * @param background background of the picture
 */
public record ChartStyle(
    int width,
    int height,
    Edges edges,
    Type type,
    Weights weights,
    Words words,
    Background background) {
  /** The amount of a figure's text inside the picture. */
  public enum Words {
    /** All text. */
    ALL,
    /** All text around the plot, but at most three labels in it. */
    FEW_LABELS,
    /** The minimal text of a thumbnail. */
    FEW
  }

  /** Margins on the left and right, and above and below. */
  public record Edges(double across, double down) {}

  /**
   * Sizes of text.
   *
   * @param tick numbers along the axes, and the credit
   * @param label labels in the plot, and the subtitle
   * @param title title of the picture
   * @param slack factor on measured widths: the viewer's font may be wider than the bundled one
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

  private ChartStyle(int width, int height, Edges edges, Type type, Weights weights, Words words) {
    this(width, height, edges, type, weights, words, Background.PAPER);
  }

  /**
   * Style of the page: 720 x 405, printed at least 150 mm wide, so that a pixel is at least 0.59 pt
   * and the smallest text 8 pt.
   */
  public static ChartStyle print() {
    return new ChartStyle(
        720,
        405,
        new Edges(10, 8),
        new Type(13.7, 14, 19, 1.06),
        new Weights(2.4, 1, 1.3, 3.1, 4.6),
        Words.ALL);
  }

  /** Style of paper next to text: printed 118 mm wide, so that a pixel is 0.669 pt. */
  public static ChartStyle column() {
    return new ChartStyle(
        500,
        281,
        new Edges(4, 5),
        new Type(12.1, 12.3, 15, 1.06),
        new Weights(2.2, 0.9, 1.2, 2.7, 4),
        Words.ALL);
  }

  /**
   * Style of a narrow screen, where a pixel of the picture is slightly less than one of the screen.
   */
  public static ChartStyle narrow() {
    return new ChartStyle(
        360,
        440,
        new Edges(8, 8),
        new Type(12.8, 13, 17, 1.06),
        new Weights(2, 0.8, 1.1, 2.4, 3.6),
        Words.ALL);
  }

  /** Style of film: 1920 x 1080, margins of a twentieth, no text below 48 pixels. */
  public static ChartStyle film() {
    return new ChartStyle(
        1920,
        1080,
        new Edges(96, 54),
        new Type(48, 48, 66, 1.0),
        new Weights(8, 2, 4, 9, 14),
        Words.FEW_LABELS);
  }

  /**
   * Style of a phone: 1080 wide with the given height, margins of a twentieth, no text below 36
   * pixels.
   */
  public static ChartStyle tall(int height) {
    return new ChartStyle(
        1080,
        height,
        new Edges(54, 0.05 * height),
        new Type(38, 40, 60, 1.0),
        new Weights(8, 2, 4, 8, 13),
        Words.FEW_LABELS);
  }

  /** Style of a thumbnail: 320 x 180, no text below 16 pixels. */
  public static ChartStyle small() {
    return new ChartStyle(
        320,
        180,
        new Edges(8, 6),
        new Type(16, 17, 17, 1.0),
        new Weights(3.2, 1, 1.4, 2.6, 4),
        Words.FEW);
  }

  /** Returns this style on another background. */
  public ChartStyle on(Background other) {
    return new ChartStyle(width, height, edges, type, weights, words, other);
  }

  /** Returns this style for several plots: texts are 8 pt in print, and lines thinner. */
  public ChartStyle dense() {
    double size = 0.89 * type.tick();
    return new ChartStyle(
        width,
        height,
        edges,
        new Type(size, size, type.title(), type.slack()),
        new Weights(
            0.8 * weights.curve(),
            weights.thin(),
            0.9 * weights.mark(),
            weights.dot(),
            0.75 * weights.markDot()),
        words,
        background);
  }

  /** Returns true if the picture is much wider than high. */
  public boolean isWide() {
    return width > 1.5 * height;
  }

  /** Returns true if the picture has room for only a few words. */
  public boolean isSmall() {
    return words == Words.FEW;
  }

  /** Returns the gap between a mark and its label. */
  public double gap() {
    return type.label() * 0.6;
  }

  /** Returns the distance between the baselines of a label's lines. */
  public double leading() {
    return type.label() * 1.25;
  }

  /** Returns a solid line. */
  public BasicStroke solid(double lineWidth) {
    return stroke(lineWidth, BasicStroke.CAP_BUTT);
  }

  /** Returns the stroke of the curve without wide gaps. */
  public BasicStroke curve() {
    return stroke(weights.curve(), BasicStroke.CAP_ROUND);
  }

  /**
   * Returns a dashed stroke.
   *
   * @param share width, as a factor on that of the curve
   * @param dash lengths of dashes and gaps, as factors on the width of the curve
   */
  public BasicStroke dashed(double share, double... dash) {
    double[] lengths = DoubleStream.of(dash).map(d -> d * weights.curve()).toArray();
    return stroke(share * weights.curve(), BasicStroke.CAP_BUTT, lengths);
  }

  /** Returns the stroke of guides from an axis to a mark. */
  public BasicStroke dotted() {
    return stroke(weights.mark(), BasicStroke.CAP_ROUND, 0.1, 3 * weights.mark());
  }

  private static BasicStroke stroke(double width, int cap, double... dash) {
    float[] lengths = new float[dash.length];
    for (int i = 0; i < dash.length; i++) {
      lengths[i] = (float) dash[i];
    }
    int join = BasicStroke.JOIN_ROUND;
    return new BasicStroke((float) width, cap, join, 10, dash.length == 0 ? null : lengths, 0);
  }
}
