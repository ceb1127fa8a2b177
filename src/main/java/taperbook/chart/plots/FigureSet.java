package taperbook.chart.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import taperbook.chart.model.FigureText;
import taperbook.chart.render.Figure;
import taperbook.result.Curve;
import taperbook.result.Curves;
import taperbook.result.ReportResult;

/**
 * Draws the figures of a report. Omits figures whose curves are missing or that are not requested.
 * The same result gives the same figures, byte for byte.
 */
public final class FigureSet {
  private static final Set<String> OF_ROAD =
      Set.of("plug-in-table", "road-per-minute", "trip-timeline", "range-over-speed");

  private FigureSet() {}

  /** Returns all figures in display order. */
  public static List<Figure> draw(ReportResult result) {
    return Stream.of(ofSession(result), ofRoad(result), ofComparison(result))
        .flatMap(List::stream)
        .toList();
  }

  /** Returns true for the figures of the chapter on road metrics. */
  public static boolean isOfRoad(String id) {
    return OF_ROAD.contains(id);
  }

  /** Returns the figures of the reported session. */
  public static List<Figure> ofSession(ReportResult result) {
    FigureText texts = new FigureText(result);
    Curves curves = result.main().curves();
    Optional<Curve> charge = curves.socOverTime();
    return Stream.of(
            curves.powerOverSoc().map(c -> PowerOverSoc.draw(c, curves.powerBand(), texts)),
            curves
                .powerOverTime()
                .map(c -> PowerOverTime.draw(c, charge, texts))
                .or(() -> charge.map(c -> SocOverTime.draw(c, texts))),
            curves.distanceOverTime().map(c -> DistanceOverTime.draw(c, texts)))
        .flatMap(Optional::stream)
        .toList();
  }

  /** Returns the figures of the chapter on road metrics. */
  static List<Figure> ofRoad(ReportResult result) {
    return Stream.of(
            PlugInTable.figure(result),
            RoadPerMinute.figure(result),
            TripTimeline.figure(result),
            RangeOverSpeed.figure(result))
        .flatMap(Optional::stream)
        .toList();
  }

  /**
   * Returns the figures that compare sessions: the runs of the reported session; power over state
   * of charge and over time, the differences, and power per kWh of the battery.
   */
  public static List<Figure> ofComparison(ReportResult result) {
    List<Figure> figures = new ArrayList<>();
    RunsOverSoc.draw(result).ifPresent(figures::add);
    if (result.compared().isEmpty()) {
      return figures;
    }
    Lineup lineup = Lineup.of(result);
    PowersOverSoc.draw(lineup).ifPresent(figures::add);
    PowersOverTime.draw(lineup).ifPresent(figures::add);
    for (int k = 0; k < lineup.pairs().size(); k++) {
      DifferenceOverSoc.draw(lineup, k).ifPresent(figures::add);
    }
    ChargeRates.draw(lineup).ifPresent(figures::add);
    return figures;
  }
}
