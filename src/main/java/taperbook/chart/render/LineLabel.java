package taperbook.chart.render;

import static taperbook.chart.render.Callout.Side.ABOVE;
import static taperbook.chart.render.Callout.Side.ABOVE_LEFT;
import static taperbook.chart.render.Callout.Side.ABOVE_RIGHT;
import static taperbook.chart.render.Callout.Side.BELOW;
import static taperbook.chart.render.Callout.Side.BELOW_LEFT;
import static taperbook.chart.render.Callout.Side.BELOW_RIGHT;
import static taperbook.chart.render.Callout.Side.LEFT;
import static taperbook.chart.render.Callout.Side.RIGHT;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import taperbook.chart.model.Palette;
import taperbook.chart.model.PlotArea;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.Series;
import taperbook.chart.render.Callout.Spot;

/**
 * The label of one of several lines: at its end, or along it where there is room, with a sample of
 * the line before its text.
 */
final class LineLabel {
  private static final List<Callout.Side> SIDES =
      List.of(RIGHT, ABOVE_RIGHT, BELOW_RIGHT, ABOVE, BELOW, ABOVE_LEFT, BELOW_LEFT, LEFT);

  /** Maximum line lengths to try, in characters: for one line, for two or three, for more. */
  private static final int[] LENGTHS = {34, 20, 13};

  /** Number of candidate places along a line. */
  private static final int SPOTS = 24;

  /** Cost of breaking a label into more lines, and of reducing it to its letter. */
  private static final double FORM_COST = 7;

  private static final double LETTER_COST = 36;

  private LineLabel() {}

  /** Returns the forms of the labels of all lines, those with the least room first. */
  public static List<List<Callout>> hardestFirst(
      List<Series> series, PlotArea area, LabelPlacer placer) {
    Map<List<Callout>, Double> difficulties = new LinkedHashMap<>();
    for (Series one : series) {
      List<Callout> forms = forms(one, area);
      difficulties.put(forms, placer.difficulty(forms));
    }
    return difficulties.entrySet().stream()
        .sorted(Map.Entry.<List<Callout>, Double>comparingByValue().reversed())
        .map(Map.Entry::getKey)
        .toList();
  }

  /**
   * Returns the forms of the label, best first, its letter alone last; none if the title names the
   * line.
   */
  static List<Callout> forms(Series series, PlotArea area) {
    if (series.name().isEmpty()) {
      return List.of();
    }
    Set<List<String>> texts = new LinkedHashSet<>();
    for (int length : LENGTHS) {
      texts.add(wrapped(series.name(), length));
    }
    List<Spot> spots = spots(series.line(), area);
    List<Callout> forms = new ArrayList<>();
    for (List<String> text : texts) {
      forms.add(form(series, text, spots, FORM_COST * forms.size()));
    }
    forms.add(form(series, List.of(series.letter()), spots, LETTER_COST));
    return forms;
  }

  private static Callout form(Series series, List<String> text, List<Spot> spots, double handicap) {
    return new Callout(spots, text, Palette.INK, Optional.of(series.pen()), SIDES, true, handicap);
  }

  /** Returns the line's end, then places all along it. */
  private static List<Spot> spots(PlotLine line, PlotArea area) {
    List<Spot> spots = new ArrayList<>();
    int last = line.size() - 1;
    spots.add(new Spot(area.px(line.x(last)), area.py(line.y(last)), 0));
    for (int k = SPOTS - 1; k >= 0; k--) {
      double x = line.x(0) + (line.lastX() - line.x(0)) * k / SPOTS;
      line.yAt(x).ifPresent(y -> spots.add(new Spot(area.px(x), area.py(y), 0)));
    }
    return spots;
  }

  /** Breaks words into lines of a maximum number of characters, as far as words allow. */
  public static List<String> wrapped(String text, int length) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      if (line.length() > 1 && line.length() + 1 + word.length() > length) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
