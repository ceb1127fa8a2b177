package taperbook.draw.paint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.draw.chart.Chart;
import taperbook.draw.chart.Frame;
import taperbook.draw.chart.Standings;
import taperbook.draw.label.Callout;
import taperbook.draw.label.Callout.Side;
import taperbook.draw.label.Callout.Spot;
import taperbook.draw.style.Box;
import taperbook.draw.style.ChartStyle;
import taperbook.draw.style.Palette;

/**
 * PlacedLabels of who is ahead where: names along the bar where they fit, and one for each
 * crossing.
 */
final class StandingLabels {
  private static final List<Side> RIGHT_OF_CROSSING =
      List.of(
          Side.ABOVE_RIGHT,
          Side.BELOW_RIGHT,
          Side.ABOVE,
          Side.BELOW,
          Side.BELOW_LEFT,
          Side.ABOVE_LEFT);

  private static final List<Side> LEFT_OF_CROSSING =
      List.of(
          Side.BELOW_LEFT,
          Side.ABOVE_LEFT,
          Side.BELOW,
          Side.ABOVE,
          Side.ABOVE_RIGHT,
          Side.BELOW_RIGHT);

  private final Chart chart;
  private final Frame frame;
  private final ChartStyle style;

  StandingLabels(Chart chart, Frame frame, ChartStyle style) {
    this.chart = chart;
    this.frame = frame;
    this.style = style;
  }

  List<Callout> callouts() {
    List<Callout> callouts = new ArrayList<>();
    for (Standings standings : chart.marks().standings().stream().toList()) {
      standings.parts().forEach(part -> name(part).ifPresent(callouts::add));
      int last = standings.crossings().size() - 1;
      for (int i = 0; i <= last; i++) {
        // Towards the outside, so that leaders do not cross.
        List<Side> sides = i < last ? LEFT_OF_CROSSING : RIGHT_OF_CROSSING;
        callouts.add(crossing(standings.crossings().get(i), sides));
      }
    }
    return callouts;
  }

  /** The first name that is no wider than its piece of the bar. */
  private Optional<Callout> name(Standings.Part part) {
    Box piece = StandingsLayer.piece(part, frame);
    Spot spot = new Spot(piece.left() + piece.width() / 2, piece.top(), 0);
    return part.names().stream()
        .map(name -> new Callout(spot, List.of(name), Palette.INK, List.of(Side.ABOVE), false))
        .filter(callout -> callout.size(style).width() <= piece.width())
        .findFirst();
  }

  private Callout crossing(Standings.Crossing crossing, List<Side> sides) {
    Spot spot = new Spot(frame.px(crossing.x()), frame.py(0), 0);
    return new Callout(spot, crossing.label(), Palette.ACCENT, sides, true);
  }
}
