package taperbook.draw;

import java.util.ArrayList;
import java.util.List;
import taperbook.draw.Callout.Side;
import taperbook.draw.Callout.Spot;

/** Labels of who is ahead where: names along the bar where they fit, and one for each crossing. */
final class StandingLabels {
  private static final List<Side> AT_CROSSING =
      List.of(
          Side.ABOVE_RIGHT,
          Side.BELOW_LEFT,
          Side.ABOVE,
          Side.BELOW,
          Side.ABOVE_LEFT,
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
      standings.parts().stream().map(this::name).filter(this::fits).forEach(callouts::add);
      standings.crossings().stream().map(this::crossing).forEach(callouts::add);
    }
    return callouts;
  }

  private Callout name(Standings.Part part) {
    Box piece = StandingsLayer.piece(part, frame);
    Spot spot = new Spot(piece.left() + piece.width() / 2, piece.top(), piece.width() / 2);
    return new Callout(spot, List.of(part.name()), Palette.INK, List.of(Side.ABOVE), false);
  }

  /** True if a name is no wider than its piece of the bar. */
  private boolean fits(Callout name) {
    return name.size(style).width() <= 2 * name.spots().get(0).reach();
  }

  private Callout crossing(Standings.Crossing crossing) {
    Spot spot = new Spot(frame.px(crossing.x()), frame.py(0), 0);
    return new Callout(spot, crossing.label(), Palette.ACCENT, AT_CROSSING, true);
  }
}
