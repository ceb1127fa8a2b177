package taperbook.draw.style;

import java.awt.BasicStroke;

/**
 * The sizes of one rendering of a chart, in its own pixels.
 *
 * @param width width of the picture
 * @param height height of the picture
 * @param margins room around the plot
 * @param type sizes of text
 * @param weights widths of lines and sizes of dots
 * @param words what of the figure's words stands inside the picture
 * @param ground what the picture lies on
 */
public record ChartStyle(
    int width,
    int height,
    Margins margins,
    Type type,
    Weights weights,
    Words words,
    Ground ground) {
  /** What of a figure's words stands inside the picture. */
  public enum Words {
    /** All but the title, which the page prints. */
    UNTITLED,
    /** All of them. */
    ALL,
    /** As few as a thumbnail bears. */
    FEW
  }

  /** Room around the plot, on its four sides. */
  public record Margins(int left, int top, int right, int bottom) {}

  /**
   * Sizes of text.
   *
   * @param tick numbers along the axes, axis titles and the note
   * @param label labels in the plot
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
   * For the page: 720 x 405, printed about 170 mm wide, so that a pixel is 0.669 pt and the
   * smallest text about 9 pt.
   */
  public static ChartStyle print() {
    return new ChartStyle(
        720,
        405,
        new Margins(50, 38, 22, 54),
        new Type(13.5, 14, 0, 1.06),
        new Weights(2.4, 1, 1.3, 3.1, 4.6),
        Words.UNTITLED,
        Ground.PAPER);
  }

  /** For a narrow screen, where a pixel of the picture is a bit less than one of the screen. */
  public static ChartStyle narrow() {
    return new ChartStyle(
        360,
        300,
        new Margins(34, 32, 18, 44),
        new Type(11.5, 12, 0, 1.06),
        new Weights(2, 0.8, 1.1, 2.4, 3.6),
        Words.UNTITLED,
        Ground.PAPER);
  }

  /** For film: 1920 x 1080, no text below 28 pixels. */
  public static ChartStyle film() {
    return new ChartStyle(
        1920,
        1080,
        new Margins(120, 238, 64, 142),
        new Type(32, 34, 58, 1.0),
        new Weights(6, 2, 3, 7.5, 11),
        Words.ALL,
        Ground.PAPER);
  }

  /** For a thumbnail: 320 x 180, no text below 16 pixels. */
  public static ChartStyle small() {
    return new ChartStyle(
        320,
        180,
        new Margins(42, 32, 12, 26),
        new Type(16, 17, 17, 1.0),
        new Weights(3.2, 1, 1.4, 2.6, 4),
        Words.FEW,
        Ground.PAPER);
  }

  /** This style on another ground. */
  public ChartStyle on(Ground other) {
    return new ChartStyle(width, height, margins, type, weights, words, other);
  }

  /** Whether title and subtitle stand inside the picture. */
  public boolean titled() {
    return words == Words.ALL;
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
