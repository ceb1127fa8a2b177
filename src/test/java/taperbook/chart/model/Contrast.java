package taperbook.chart.model;

import java.awt.Color;

/**
 * Contrast ratio of two colours, from 1 to 21.
 *
 * @see <a href="https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio">WCAG 2.2: contrast ratio,
 *     relative luminance</a>
 */
public final class Contrast {
  private Contrast() {}

  /** The contrast ratio, in either order of the colours. */
  public static double between(Color one, Color other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(Color color) {
    return 0.2126 * linear(color.getRed())
        + 0.7152 * linear(color.getGreen())
        + 0.0722 * linear(color.getBlue());
  }

  private static double linear(int eightBit) {
    double share = eightBit / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }
}
