package taperbook.chart.plots;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import taperbook.chart.model.FigureText;
import taperbook.chart.render.Draft;
import taperbook.chart.render.Figure;
import taperbook.result.Curve;
import taperbook.result.Curves;
import taperbook.result.ReportResult;

/** Draws the figures of a report. */
public final class FigureSet {
  private FigureSet() {}

  /**
   * Returns the figures of the reported session in display order. Omits figures whose curves are
   * missing. The same result gives the same figures, byte for byte.
   */
  public static List<Figure> draw(ReportResult result) {
    return Stream.concat(drafts(result).stream().map(Figure::of), RoadFigures.draw(result).stream())
        .toList();
  }

  /** Returns true for the figures of the chapter on road metrics. */
  public static boolean isOfRoad(String id) {
    return RoadFigures.IDS.contains(id);
  }

  /** Returns the figures before painting. */
  public static List<Draft> drafts(ReportResult result) {
    FigureText texts = new FigureText(result);
    Curves curves = result.main().curves();
    Optional<Curve> power = curves.powerOverTime().filter(FigureSet::hasPoints);
    Optional<Curve> charge = curves.socOverTime().filter(FigureSet::hasPoints);
    return Stream.of(
            curves
                .powerOverSoc()
                .filter(FigureSet::hasPoints)
                .map(c -> PowerOverSoc.draft(c, curves.powerBand(), texts)),
            power
                .map(c -> PowerOverTime.draft(c, charge, texts))
                .or(() -> charge.map(c -> SocOverTime.draft(c, texts))),
            curves
                .distanceOverTime()
                .filter(FigureSet::hasPoints)
                .map(c -> DistanceOverTime.draft(c, texts)))
        .flatMap(Optional::stream)
        .toList();
  }

  private static boolean hasPoints(Curve curve) {
    return curve.size() > 0;
  }
}
