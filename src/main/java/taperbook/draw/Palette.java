package taperbook.draw;

import java.awt.Color;

/**
 * The colours of all charts. Text keeps 4.5:1 and lines 3:1 against white; tints carry no meaning
 * of their own, each comes with an edge, a dot or words.
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

  /** The join over a wide gap: lighter than the curve, and dashed. */
  public static final Color GAP = new Color(0x4d8b96);

  /** Marks and the hold. */
  public static final Color ACCENT = new Color(0xa8480f);

  /** Grid lines, which nobody needs to see to read the chart. */
  public static final Color GRID = new Color(0xe4e8ea);

  /** Tint of the band around the curve. */
  public static final Color BAND = new Color(0xd3e6e9);

  /** Tint of the hold. */
  public static final Color HOLD = new Color(0xf8e9df);

  private Palette() {}
}
