package taperbook.chart.model;

import java.awt.Color;
import java.util.HexFormat;

/** Formats colours for style rules and SVG. */
public final class HexColor {
  private static final int DIGITS = 6;

  private HexColor() {}

  /** Returns {@code #rrggbb}; ignores transparency. */
  public static String of(Color color) {
    return "#" + HexFormat.of().toHexDigits(color.getRGB(), DIGITS);
  }
}
