package taperbook.draw.chart;

import java.util.List;
import java.util.Optional;

/** What of a chart a thumbnail shows: its lines, and the one mark that tells most. */
public final class Thumbnail {
  private Thumbnail() {}

  /** The chart with fewer marks, shorter labels and letters for names. */
  public static Chart of(Chart chart) {
    Chart.Marks marks = chart.marks();
    Optional<Chart.Hold> hold = marks.hold().map(Thumbnail::shorter);
    List<Chart.Point> points =
        hold.isPresent() || marks.points().isEmpty()
            ? List.of()
            : List.of(marks.points().get(marks.points().size() - 1));
    return new Chart(
        chart.id(),
        chart.title(),
        chart.x(),
        chart.y(),
        chart.series().stream().map(Thumbnail::shorter).toList(),
        new Chart.Marks(hold, Optional.empty(), points, marks.standings().map(Thumbnail::shorter)));
  }

  /** The peak or stretch with the shorter of its labels. */
  private static Chart.Hold shorter(Chart.Hold hold) {
    return new Chart.Hold(hold.from(), hold.to(), hold.y(), List.of(hold.brief()));
  }

  private static Series shorter(Series series) {
    return new Series(series.line(), series.pen(), series.name().isEmpty() ? "" : series.letter());
  }

  private static Standings shorter(Standings standings) {
    return new Standings(
        standings.parts(),
        standings.crossings().stream()
            .map(c -> new Standings.Crossing(c.x(), c.low(), c.high(), List.of(c.label().get(0))))
            .toList());
  }
}
