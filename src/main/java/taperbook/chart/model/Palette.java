package taperbook.chart.model;

import java.awt.Color;
import java.util.HexFormat;
import java.util.List;

/**
 * The colours of all charts. Text has a contrast of 4.5:1 and lines 3:1 against white. Tints alone
 * carry no meaning: each is combined with an edge, a dot or text.
 *
 * @see <a href="https://www.w3.org/TR/WCAG22/#contrast-minimum">WCAG 2.2, 1.4.3 and 1.4.11</a>
 */
public final class Palette {
  /** The paper. */
  public static final Color PAPER = new Color(0xffffff);

  /** Main text. */
  public static final Color INK = new Color(0x1f2a30);

  /** Secondary text, axes, drop lines. */
  public static final Color GREY = new Color(0x6b7780);

  /** The curve and its readings. */
  public static final Color CURVE = new Color(0x0b5d6b);

  /** The line over a wide gap: lighter than the curve, and dashed. */
  public static final Color GAP = new Color(0x4d8b96);

  /** Marks and the bracket of the hold. */
  public static final Color ACCENT = new Color(0xa8480f);

  /** Grid lines, which are not required to read the chart. */
  public static final Color GRID = new Color(0xe4e8ea);

  /** Tint of the band around the curve. */
  public static final Color BAND = new Color(0xd3e6e9);

  /**
   * Sessions that share a chart, in order, the reported one first. Distinct with colour vision
   * deficiency and in greyscale.
   */
  public static final List<Color> SESSIONS =
      List.of(
          CURVE,
          new Color(0xc7601c),
          new Color(0x39137e),
          new Color(0x8c89e0),
          new Color(0x6b2e2f),
          new Color(0x816337));

  private Palette() {}

  /** Returns {@code #rrggbb} for style rules and SVG; ignores transparency. */
  public static String hex(Color color) {
    return "#" + HexFormat.of().toHexDigits(color.getRGB(), 6);
  }
}
