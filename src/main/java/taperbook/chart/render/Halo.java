package taperbook.chart.render;

import java.awt.image.BufferedImage;

/**
 * Adds a dark outline below nearly opaque shapes in a transparent picture, so that light lines and
 * texts are legible on any background. Tints and grid lines have no outline.
 */
final class Halo {
  private static final int RADIUS_PIXELS = 3;
  private static final int SOFT_PIXELS = 2;
  private static final int FAINTEST_WITH_HALO = 208;
  private static final int DARK = 0x0a0f12;
  private static final int MOST_ALPHA = 220;

  private Halo() {}

  /** Returns the picture with its outline below it, as a picture of the same size. */
  static BufferedImage below(BufferedImage picture) {
    int w = picture.getWidth();
    int h = picture.getHeight();
    int[] argb = picture.getRGB(0, 0, w, h, null, 0, w);
    int[] alpha = new int[argb.length];
    for (int i = 0; i < argb.length; i++) {
      int a = argb[i] >>> 24;
      alpha[i] = a >= FAINTEST_WITH_HALO ? a : 0;
    }
    int[] wide = grown(grown(alpha, w, h, 1), w, h, w);
    int[] soft = softened(softened(wide, w, h, 1), w, h, w);
    for (int i = 0; i < argb.length; i++) {
      argb[i] = over(argb[i], soft[i] * MOST_ALPHA / 255);
    }
    BufferedImage both = new BufferedImage(w, h, BufferedImage.TYPE_INT_ARGB);
    both.setRGB(0, 0, w, h, argb, 0, w);
    return both;
  }

  /** Returns the maximum of neighbours along one direction. */
  private static int[] grown(int[] from, int w, int h, int step) {
    return along(from, w, h, step, RADIUS_PIXELS, false);
  }

  /** Returns the mean of neighbours along one direction; pixels outside count as zero. */
  private static int[] softened(int[] from, int w, int h, int step) {
    return along(from, w, h, step, SOFT_PIXELS, true);
  }

  private static int[] along(int[] from, int w, int h, int step, int radius, boolean mean) {
    int[] to = new int[from.length];
    for (int i = 0; i < from.length; i++) {
      int at = step == 1 ? i % w : i / w;
      int end = step == 1 ? w : h;
      int total = 0;
      for (int k = Math.max(-radius, -at); k <= Math.min(radius, end - 1 - at); k++) {
        int value = from[i + k * step];
        total = mean ? total + value : Math.max(total, value);
      }
      to[i] = mean ? total / (2 * radius + 1) : total;
    }
    return to;
  }

  /**
   * Composites a pixel over the dark outline.
   *
   * @param argb the pixel, not premultiplied
   * @param below opacity of the outline, 0 to 255
   * @see <a href="https://www.w3.org/TR/compositing-1/#porterduffcompositingoperators_srcover">
   *     Compositing and Blending Level 1, source over</a>
   */
  static int over(int argb, int below) {
    int above = argb >>> 24;
    int rest = below * (255 - above) / 255;
    int alpha = above + rest;
    if (alpha == 0) {
      return 0;
    }
    int result = alpha << 24;
    for (int shift = 16; shift >= 0; shift -= 8) {
      int top = (argb >> shift) & 0xff;
      int bottom = (DARK >> shift) & 0xff;
      result |= ((top * above + bottom * rest + alpha / 2) / alpha) << shift;
    }
    return result;
  }
}
