package taperbook.chart.model;

import java.awt.Color;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The background of a picture, with its mapping of the {@link Palette}. On dark, text has a
 * contrast of 4.5:1 and lines 3:1, and session colours remain distinct.
 *
 * @see <a href="https://www.w3.org/TR/WCAG22/#contrast-minimum">WCAG 2.2, 1.4.3 and 1.4.11</a>
 */
public enum Background {
  /** White paper. */
  PAPER(Palette.PAPER, Map.of()),
  /** An opaque dark background. */
  DARK(new Color(0x11181c), dark(new Color(0xb0bcc3), new Color(0x2b363c), new Color(0x17414a))),
  /** Transparent, for a film: light lines with a dark outline, translucent tints. */
  CLEAR(
      new Color(0, true),
      dark(new Color(0xe2e9ec), new Color(0x55ffffff, true), new Color(0x9916404a, true)));

  private static final int OPAQUE = 255;

  private static final List<Color> SESSIONS_ON_DARK =
      List.of(
          new Color(0x4cc3d4),
          new Color(0xffa04d),
          new Color(0x9f7bff),
          new Color(0xdcdcff),
          new Color(0xe0777d),
          new Color(0xd2c06a));

  private final Color color;
  private final Map<Color, Color> others;

  Background(Color color, Map<Color, Color> others) {
    this.color = color;
    this.others = others;
  }

  /** Returns the background colour; transparent if the picture has none. */
  public Color color() {
    return color;
  }

  /** Maps a palette colour to this background, keeping its transparency. */
  public Color of(Color onPaper) {
    if (this == PAPER) {
      return onPaper;
    }
    if (onPaper.getAlpha() < OPAQUE) {
      return thinned(of(new Color(onPaper.getRGB())), onPaper.getAlpha());
    }
    if (onPaper.equals(Palette.PAPER)) {
      return color;
    }
    int session = Palette.SESSIONS.indexOf(onPaper);
    return session >= 0 ? SESSIONS_ON_DARK.get(session) : others.getOrDefault(onPaper, onPaper);
  }

  private static Color thinned(Color color, int opacity) {
    int both = Math.round(color.getAlpha() * opacity / (float) OPAQUE);
    return new Color(color.getRed(), color.getGreen(), color.getBlue(), both);
  }

  private static Map<Color, Color> dark(Color grey, Color grid, Color band) {
    Map<Color, Color> map = new HashMap<>();
    map.put(Palette.INK, new Color(0xf3f6f7));
    map.put(Palette.GREY, grey);
    map.put(Palette.GAP, new Color(0x4f9aa6));
    map.put(Palette.ACCENT, new Color(0xffa25e));
    map.put(Palette.GRID, grid);
    map.put(Palette.BAND, band);
    return Map.copyOf(map);
  }
}
