package taperbook.chart.model;

import java.awt.Color;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Style rules that give the SVG charts of a page the colours of a dark background. */
public final class DarkScheme {
  private static final List<Color> COMMON =
      List.of(
          Palette.PAPER,
          Palette.INK,
          Palette.GREY,
          Palette.CURVE,
          Palette.GAP,
          Palette.ACCENT,
          Palette.GRID,
          Palette.BAND);

  private DarkScheme() {}

  /**
   * Returns a rule for each colour of the palette, as fill and as stroke.
   *
   * @param around selector of the element that contains the charts
   */
  public static String rules(String around) {
    Set<Color> colors = new LinkedHashSet<>(COMMON);
    colors.addAll(Palette.SESSIONS);
    return colors.stream()
        .map(c -> rule(around, Palette.hex(c), Palette.hex(Background.DARK.of(c))))
        .collect(Collectors.joining());
  }

  private static String rule(String around, String from, String to) {
    return (around + " [fill=\"" + from + "\"]{fill:" + to + "}")
        + (around + " [stroke=\"" + from + "\"]{stroke:" + to + "}");
  }
}
