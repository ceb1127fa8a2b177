package taperbook.chart.model;

import java.awt.Color;

/**
 * One placed line of text, kept as text until the picture is written.
 *
 * @param text its text
 * @param x pixel of its anchor
 * @param baseline pixel of its baseline
 * @param anchor part of the text at {@code x}
 * @param font its font
 */
public record TextRun(String text, double x, double baseline, Anchor anchor, Face font) {
  /** The part of a text at its anchor, with its name in SVG. */
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
   * The font of a text.
   *
   * @param size size in pixels
   * @param bold whether it is bold
   * @param color its colour
   */
  public record Face(double size, boolean bold, Color color) {}

  /** Returns the width in pixels. */
  public double width() {
    return Typeface.width(text, font.bold(), font.size());
  }

  /** Returns the pixel of the text's left edge. */
  public double left() {
    return x - anchor.share * width();
  }

  /** Returns the bounding box of the text: from slightly above capitals to descenders. */
  public Box box() {
    return new Box(left(), baseline - 0.8 * font.size(), width(), font.size());
  }
}
