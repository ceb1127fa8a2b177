package taperbook.chart.model;

import java.awt.Color;

/**
 * One line of text in its place, kept as text until the picture is written.
 *
 * @param text what it says
 * @param x pixel that it is anchored at
 * @param baseline pixel of its baseline
 * @param anchor which part of the text stands at {@code x}
 * @param font how it is set
 */
public record TextRun(String text, double x, double baseline, Anchor anchor, Face font) {
  /** Which part of a text stands at its place, with the word that SVG has for it. */
  public enum Anchor {
    /** Its left end. */
    START("start", 0),
    /** Its middle. */
    MIDDLE("middle", 0.5),
    /** Its right end. */
    END("end", 1);

    private final String svg;
    private final double share;

    Anchor(String svg, double share) {
      this.svg = svg;
      this.share = share;
    }

    public String svg() {
      return svg;
    }
  }

  /**
   * How a text is set.
   *
   * @param size size in pixels
   * @param bold whether it is bold
   * @param color its colour
   */
  public record Face(double size, boolean bold, Color color) {}

  /** Width in pixels. */
  public double width() {
    return Typeface.width(text, font.bold(), font.size());
  }

  /** Pixel of the text's left edge. */
  public double left() {
    return x - anchor.share * width();
  }

  /** The box that the text may fill: its line from a little above capitals to descenders. */
  public Box box() {
    return new Box(left(), baseline - 0.8 * font.size(), width(), font.size());
  }
}
