package taperbook.draw;

import java.util.List;

/** How to read a drawing, in a line below it. */
final class Note {
  private Note() {}

  /** The note of a chart. */
  static String of(Chart chart) {
    Pen pen = chart.series().get(0).pen();
    if (pen.isOneOfSeveral()) {
      return ofSeveral(chart.series());
    }
    return pen.marksReadings() ? ofReadings(chart) : ofDifference(chart);
  }

  private static String ofDifference(Chart chart) {
    return chart.hasVisibleBand() ? "Tint: 95 % band." : "Line: the difference.";
  }

  private static String ofReadings(Chart chart) {
    PlotLine line = chart.line();
    StringBuilder note = new StringBuilder();
    if (!line.isComputed()) {
      note.append(line.hasDots() ? "Dots: readings." : "Line: " + line.size() + " readings.");
    }
    if (line.wideGaps() > 0) {
      note.append(" Dashes: long gaps.");
    }
    if (chart.hasVisibleBand()) {
      note.append(" Tint: bounds.");
    }
    return note.toString().strip();
  }

  private static String ofSeveral(List<Series> series) {
    List<String> dense =
        series.stream().filter(s -> !s.line().hasDots()).map(Series::letter).toList();
    String marked =
        dense.isEmpty()
            ? "Marked: readings."
            : dense.size() == series.size()
                ? "Marked: some readings."
                : "Marked: readings (" + String.join(", ", dense) + ": some).";
    boolean gaps = series.stream().anyMatch(s -> s.line().wideGaps() > 0);
    return gaps ? marked + " Thin: long gaps." : marked;
  }
}
