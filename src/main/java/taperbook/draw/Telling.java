package taperbook.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.IntFunction;

/** Tells a chart in words: axes, readings, gaps, and a few points of the curve. */
final class Telling {
  /** Points to name, beside the peak: enough to follow the shape by ear. */
  private static final int SAMPLES = 9;

  private final List<String> sentences = new ArrayList<>();

  /**
   * Begins with what kind of chart it is.
   *
   * @param x the horizontal axis in words, with its range
   * @param y the vertical axis in words, with its range
   */
  Telling(String x, String y) {
    sentences.add("Line chart. Horizontal axis: " + x + ". Vertical axis: " + y + ".");
  }

  Telling add(String sentence) {
    if (!sentence.isEmpty()) {
      sentences.add(sentence);
    }
    return this;
  }

  /**
   * Names some points of the curve, both ends and the peak among them, and its gaps.
   *
   * @param point a point in words, by its index
   */
  Telling curve(Chart chart, IntFunction<String> point) {
    PlotLine line = chart.line();
    TreeSet<Integer> named = new TreeSet<>();
    int last = line.size() - 1;
    for (int k = 0; k < SAMPLES; k++) {
      named.add((int) Math.round((double) k * last / (SAMPLES - 1)));
    }
    named.add(line.peak());
    List<String> points = named.stream().map(point::apply).toList();
    String which = points.size() == line.size() ? ": " : ", of which ";
    String readings = line.size() == 1 ? "1 reading" : line.size() + " readings";
    sentences.add("The curve has " + readings + which + String.join("; ", points) + ".");
    int gaps = line.wideGaps();
    if (gaps > 0) {
      sentences.add(
          gaps == 1
              ? "1 join spans a long gap between readings and is drawn dashed."
              : gaps + " joins span long gaps between readings and are drawn dashed.");
    }
    if (chart.hasVisibleBand()) {
      sentences.add("A tinted band shows the bounds of the readings.");
    }
    return this;
  }

  String text() {
    return String.join(" ", sentences);
  }
}
