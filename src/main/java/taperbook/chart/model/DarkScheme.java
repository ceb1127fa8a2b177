package taperbook.chart.model;

import java.awt.Color;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
    return Stream.concat(COMMON.stream(), Palette.SESSIONS.stream())
        .distinct()
        .map(c -> rule(around, Palette.hex(c), Palette.hex(Background.DARK.of(c))))
        .collect(Collectors.joining());
  }

  private static String rule(String around, String from, String to) {
    return (around + " [fill=\"" + from + "\"]{fill:" + to + "}")
        + (around + " [stroke=\"" + from + "\"]{stroke:" + to + "}");
  }
}
