package taperbook.chart.model;

import java.util.List;
import taperbook.i18n.Texts;

/** The note on how to read a drawing, shown below it. */
final class Note {
  private Note() {}

  /** Returns the note of a chart. */
  public static String of(Chart chart) {
    Pen pen = chart.series().get(0).pen();
    if (pen.isOneOfSeveral()) {
      return ofSeveral(chart.series());
    }
    return pen.marksReadings() ? ofReadings(chart) : ofDifference(chart);
  }

  private static String ofDifference(Chart chart) {
    return chart.hasVisibleBand() ? Texts.of("note.band") : Texts.of("note.difference");
  }

  private static String ofReadings(Chart chart) {
    PlotLine line = chart.line();
    StringBuilder note = new StringBuilder();
    if (!line.isComputed()) {
      note.append(line.hasDots() ? Texts.of("note.dots") : Texts.of("note.line", line.size()));
    }
    if (line.wideGaps() > 0) {
      note.append(" " + Texts.of("note.dashes"));
    }
    if (chart.hasVisibleBand()) {
      note.append(" " + Texts.of(line.hasOwnBand() ? "note.band" : "note.bounds"));
    }
    if (!chart.marks().flags().isEmpty()) {
      note.append(" " + Texts.of("note.events"));
    }
    return note.toString().strip();
  }

  private static String ofSeveral(List<Series> series) {
    List<String> dense =
        series.stream().filter(s -> !s.line().hasDots()).map(Series::letter).toList();
    String marked =
        dense.isEmpty()
            ? Texts.of("note.marked")
            : dense.size() == series.size()
                ? Texts.of("note.marked_some")
                : Texts.of("note.marked_except", String.join(", ", dense));
    boolean gaps = series.stream().anyMatch(s -> s.line().wideGaps() > 0);
    return gaps ? marked + " " + Texts.of("note.thin") : marked;
  }
}
