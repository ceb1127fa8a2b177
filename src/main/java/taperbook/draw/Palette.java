package taperbook.draw;

import java.awt.Color;

/**
 * The colours of all charts. Text keeps 4.5:1 and lines 3:1 against white; tints carry no meaning
 * of their own, each comes with an edge, a dot or words.
 *
 * @see <a href="https://www.w3.org/TR/WCAG22/#contrast-minimum">WCAG 2.2, 1.4.3 and 1.4.11</a>
 */
final class Palette {
  /** The paper. */
  static final Color PAPER = new Color(0xffffff);

  /** Main text. */
  static final Color INK = new Color(0x1f2a30);

  /** Secondary text, axes, drop lines. */
  static final Color GREY = new Color(0x6b7780);

  /** The curve and its readings. */
  static final Color CURVE = new Color(0x0b5d6b);

  /** The join over a wide gap: lighter than the curve, and dashed. */
  static final Color GAP = new Color(0x4d8b96);

  /** Marks and the hold. */
  static final Color ACCENT = new Color(0xa8480f);

  /** Grid lines, which nobody needs to see to read the chart. */
  static final Color GRID = new Color(0xe4e8ea);

  /** Tint of the band around the curve. */
  static final Color BAND = new Color(0xd3e6e9);

  /** Deepest tint of a cell in a table of amounts. */
  static final Color DEEP = new Color(0xabcfd6);

  /** Tint of the hold. */
  static final Color HOLD = new Color(0xf8e9df);

  private Palette() {}
}
