package taperbook.chart.model;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;

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
  public record Face(double size, boolean bold, Color color) {
    /** Returns the width of a text in pixels. */
    public double width(String text) {
      return Typeface.width(text, bold, size);
    }

    /** Breaks a text into lines up to a width in pixels, as far as its words allow. */
    public List<String> wrapped(String text, double width) {
      List<String> lines = new ArrayList<>();
      String line = "";
      for (String word : text.split(" ", -1)) {
        String longer = line.isEmpty() ? word : line + " " + word;
        if (!line.isEmpty() && width(longer) > width) {
          lines.add(line);
          line = word;
        } else {
          line = longer;
        }
      }
      lines.add(line);
      return lines;
    }

    /** Truncates a text with an ellipsis if it is wider than a width in pixels. */
    public String truncated(String text, double width) {
      String shown = text;
      int end = text.length();
      while (end > 0 && width(shown) > width) {
        end = text.offsetByCodePoints(end, -1);
        shown = text.substring(0, end).stripTrailing() + "\u2026";
      }
      return shown;
    }
  }

  /** Returns the width in pixels. */
  public double width() {
    return font.width(text);
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
