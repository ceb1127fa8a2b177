package taperbook.chart.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reduces a chart for a picture with room for only a few words. */
public final class Thumbnail {
  private static final int MOST_LABELS = 3;

  private Thumbnail() {}

  /** Returns the chart reduced for a style. */
  public static Chart of(Chart chart, ChartStyle style) {
    return switch (style.words()) {
      case ALL -> chart;
      case FEW_LABELS -> labelled(chart, MOST_LABELS);
      case FEW -> smallest(chart);
    };
  }

  /**
   * Returns the chart with a maximum number of labels, including names of lines, which are all
   * kept.
   */
  private static Chart labelled(Chart chart, int most) {
    Chart.Marks marks = chart.marks();
    // Two panels are too low for a label above the curve.
    Optional<Chart.Hold> hold =
        marks.hold().filter(h -> chart.below().isEmpty()).map(h -> hold(h, h.label().get(0)));
    int left = most - (hold.isPresent() ? 1 : 0);
    left -= (int) chart.series().stream().filter(s -> !s.name().isEmpty()).count();
    Optional<LeadStrip> leads = marks.leads().map(Thumbnail::shorter);
    List<Chart.Point> points = spread(marks.points(), left);
    int below = left - points.size();
    return chart.with(
        chart.series(),
        new Chart.Marks(hold, Optional.empty(), points, leads),
        chart.below().map(panel -> labelled(panel, below)));
  }

  /** Returns at most this many of the marks, evenly spread and including the last one. */
  public static List<Chart.Point> spread(List<Chart.Point> points, int most) {
    int count = Math.max(0, Math.min(most, points.size()));
    List<Chart.Point> kept = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      kept.add(points.get(i * points.size() / count - 1));
    }
    return kept;
  }

  /** Returns the chart with its lines, the most informative mark, and letters for names. */
  private static Chart smallest(Chart chart) {
    Chart.Marks marks = chart.marks();
    Optional<Chart.Hold> hold = marks.hold().map(h -> hold(h, h.brief()));
    return chart.with(
        chart.series().stream().map(Thumbnail::shorter).toList(),
        new Chart.Marks(
            hold,
            Optional.empty(),
            hold.isPresent() ? List.of() : spread(marks.points(), 1),
            marks.leads().map(Thumbnail::shorter)),
        Optional.empty());
  }

  /** Returns the peak or stretch with another label. */
  private static Chart.Hold hold(Chart.Hold hold, String label) {
    return new Chart.Hold(hold.from(), hold.to(), hold.y(), List.of(label), hold.brief());
  }

  private static Series shorter(Series series) {
    return new Series(series.line(), series.pen(), series.name().isEmpty() ? "" : series.letter());
  }

  private static LeadStrip shorter(LeadStrip leads) {
    return new LeadStrip(
        leads.parts(),
        leads.crossings().stream()
            .limit(1)
            .map(c -> new LeadStrip.Crossing(c.x(), c.low(), c.high(), List.of(c.label().get(0))))
            .toList());
  }
}
