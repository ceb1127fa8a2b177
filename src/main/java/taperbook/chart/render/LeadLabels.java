package taperbook.chart.render;

import java.util.ArrayList;
import java.util.List;
import taperbook.chart.model.Chart;
import taperbook.chart.model.LeadStrip;
import taperbook.chart.model.Palette;
import taperbook.chart.model.PlotArea;
import taperbook.chart.render.Callout.Side;
import taperbook.chart.render.Callout.Spot;

/** The labels of the points where the order of two sessions changes. */
final class LeadLabels {
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
  private final PlotArea area;

  LeadLabels(Chart chart, PlotArea area) {
    this.chart = chart;
    this.area = area;
  }

  List<Callout> callouts() {
    List<Callout> callouts = new ArrayList<>();
    for (LeadStrip leads : chart.marks().leads().stream().toList()) {
      int last = leads.crossings().size() - 1;
      for (int i = 0; i <= last; i++) {
        // Towards the outside, so that leaders do not cross.
        List<Side> sides = i < last ? LEFT_OF_CROSSING : RIGHT_OF_CROSSING;
        callouts.add(crossing(leads.crossings().get(i), sides));
      }
    }
    return callouts;
  }

  private Callout crossing(LeadStrip.Crossing crossing, List<Side> sides) {
    Spot spot = new Spot(area.px(crossing.x()), area.py(0), 0);
    return new Callout(spot, crossing.label(), Palette.ACCENT, sides, true);
  }
}
