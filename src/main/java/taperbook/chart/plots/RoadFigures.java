package taperbook.chart.plots;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import taperbook.chart.render.Figure;
import taperbook.result.ReportResult;

/** The figures of the chapter on road metrics that a report requests. */
final class RoadFigures {
  static final String PLUG_IN = "plug-in-table";
  static final String PER_MINUTE = "road-per-minute";
  static final String TRIP = "trip-timeline";

  static final String OVER_SPEED = "range-over-speed";

  public static final List<String> IDS = List.of(PLUG_IN, PER_MINUTE, TRIP, OVER_SPEED);

  private RoadFigures() {}

  public static List<Figure> draw(ReportResult result) {
    return Stream.of(
            PlugInTable.figure(result),
            RoadPerMinute.figure(result),
            TripTimeline.figure(result),
            RangeOverSpeed.figure(result))
        .flatMap(Optional::stream)
        .toList();
  }
}
