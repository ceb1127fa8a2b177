package taperbook.chart.model;

import java.awt.Color;
import java.util.HexFormat;

/** A colour as style rules and SVG write it. */
public final class HexColor {
  private static final int DIGITS = 6;

  private HexColor() {}

  /** {@code #rrggbb}; whether the colour lets anything shine through is not told. */
  public static String of(Color color) {
    return "#" + HexFormat.of().toHexDigits(color.getRGB(), DIGITS);
  }
}
