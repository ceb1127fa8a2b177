package taperbook.draw;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import taperbook.draw.chart.Said;
import taperbook.draw.picture.Draft;
import taperbook.draw.picture.Figure;
import taperbook.draw.road.RoadFigures;
import taperbook.draw.session.DistanceOverTime;
import taperbook.draw.session.PowerOverSoc;
import taperbook.draw.session.PowerOverTime;
import taperbook.draw.session.SocOverTime;
import taperbook.model.Curve;
import taperbook.model.Curves;
import taperbook.model.ReportResult;

/** Draws the figures of a report. */
public final class FigureSet {
  private FigureSet() {}

  /**
   * The figures of the reported session, in the order they should be shown. A figure whose curve
   * the session cannot give is left out. The same result gives the same figures, byte for byte.
   */
  public static List<Figure> draw(ReportResult result) {
    return Stream.concat(drafts(result).stream().map(Figure::of), RoadFigures.draw(result).stream())
        .toList();
  }

  /** True for the figures that belong into the chapter on the road. */
  public static boolean isOfRoad(String id) {
    return RoadFigures.IDS.contains(id);
  }

  /** The figures before they are painted. */
  public static List<Draft> drafts(ReportResult result) {
    Said said = new Said(result);
    Curves curves = result.main().curves();
    Optional<Curve> power = curves.powerOverTime().filter(FigureSet::hasPoints);
    Optional<Curve> charge = curves.socOverTime().filter(FigureSet::hasPoints);
    return Stream.of(
            curves
                .powerOverSoc()
                .filter(FigureSet::hasPoints)
                .map(c -> PowerOverSoc.draft(c, curves.powerBand(), said)),
            power
                .map(c -> PowerOverTime.draft(c, charge, said))
                .or(() -> charge.map(c -> SocOverTime.draft(c, said))),
            curves
                .distanceOverTime()
                .filter(FigureSet::hasPoints)
                .map(c -> DistanceOverTime.draft(c, said)))
        .flatMap(Optional::stream)
        .toList();
  }

  private static boolean hasPoints(Curve curve) {
    return curve.size() > 0;
  }
}
