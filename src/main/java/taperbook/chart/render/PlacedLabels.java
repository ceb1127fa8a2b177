package taperbook.chart.render;

import static taperbook.chart.render.Callout.Side.ABOVE;
import static taperbook.chart.render.Callout.Side.ABOVE_LEFT;
import static taperbook.chart.render.Callout.Side.ABOVE_RIGHT;
import static taperbook.chart.render.Callout.Side.BELOW;
import static taperbook.chart.render.Callout.Side.BELOW_LEFT;
import static taperbook.chart.render.Callout.Side.BELOW_RIGHT;
import static taperbook.chart.render.Callout.Side.LEFT;
import static taperbook.chart.render.Callout.Side.RIGHT;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Box;
import taperbook.chart.model.Chart;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.LeadStrip;
import taperbook.chart.model.LineThinning;
import taperbook.chart.model.Palette;
import taperbook.chart.model.PlotArea;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.Series;
import taperbook.chart.render.Callout.Spot;

/** The placed labels of a chart. */
final class PlacedLabels {
  /** Power falls to the right, so there is room above right of its curve. */
  private static final List<Callout.Side> OFF_FALLING =
      List.of(ABOVE_RIGHT, RIGHT, ABOVE, BELOW_LEFT, BELOW, LEFT, BELOW_RIGHT);

  /** Charge rises to the right, so there is room below right of its curve. */
  private static final List<Callout.Side> OFF_RISING =
      List.of(BELOW_RIGHT, RIGHT, BELOW, ABOVE_LEFT, LEFT, ABOVE);

  private static final List<Callout.Side> RIGHT_OF_CROSSING =
      List.of(ABOVE_RIGHT, BELOW_RIGHT, ABOVE, BELOW, BELOW_LEFT, ABOVE_LEFT);
  private static final List<Callout.Side> LEFT_OF_CROSSING =
      List.of(BELOW_LEFT, ABOVE_LEFT, BELOW, ABOVE, ABOVE_RIGHT, BELOW_RIGHT);

  /** Cost of reducing a label to its first line. */
  private static final double FIRST_LINE_COST = 8;

  private final LabelPlacer placer;
  private final Obstacles around;
  private final List<Callout.Placed> placed = new ArrayList<>();
  private final List<Line2D> leaders = new ArrayList<>();
  private final Chart chart;
  private final PlotArea area;
  private final ChartStyle style;

  private PlacedLabels(Chart chart, PlotArea area, ChartStyle style) {
    this.chart = chart;
    this.area = area;
    this.style = style;
    this.placer = new LabelPlacer(region(area, style), style);
    this.around = placer.obstacles();
  }

  /** Returns the area for labels: the plot, and the margin on its right. */
  static Box region(PlotArea area, ChartStyle style) {
    Box plot = area.box();
    double inset = style.gap() / 2;
    double left = plot.left() + inset;
    double right = style.width() - style.edges().across();
    return new Box(left, plot.top(), right - left, plot.height() - inset);
  }

  /** Places all labels of a chart. */
  static Placement place(Chart chart, PlotArea area, ChartStyle style) {
    return new PlacedLabels(chart, area, style).place();
  }

  /**
   * The result of placing labels.
   *
   * @param labels the labels
   * @param leaders the leaders from labels to their points
   */
  record Placement(List<Callout.Placed> labels, List<Line2D> leaders) {
    Placement {
      labels = List.copyOf(labels);
      leaders = List.copyOf(leaders);
    }
  }

  private Placement place() {
    obstacles();
    List<List<Callout>> wanted = new ArrayList<>();
    chart.marks().leads().ifPresent(s -> crossings(s).forEach(c -> wanted.add(List.of(c))));
    chart.marks().hold().ifPresent(h -> wanted.add(holdLabels(h)));
    chart.marks().window().ifPresent(w -> wanted.add(List.of(windowLabel(w))));
    chart.marks().points().forEach(p -> wanted.add(List.of(pointLabel(p))));
    wanted.forEach(this::place);
    LineLabel.hardestFirst(chart.series(), area, placer).forEach(this::place);
    return new Placement(placed, leaders);
  }

  private void place(List<Callout> forms) {
    Optional<Callout.Placed> found = placer.place(forms);
    found.ifPresent(placed::add);
    found.flatMap(placer::leader).ifPresent(leaders::add);
  }

  private void obstacles() {
    chart.series().forEach(this::avoidCurve);
    for (Chart.Point point : chart.marks().points()) {
      double x = area.px(point.x());
      double y = area.py(point.y());
      double r = style.weights().markDot() + style.weights().mark();
      around.block(new Box(x - r, y - r, 2 * r, 2 * r));
      around.avoidIfCheap(MarkLayer.guide(point, area));
    }
    chart
        .marks()
        .hold()
        .filter(Chart.Hold::isStretch)
        .ifPresent(h -> around.block(MarkLayer.bracket(h, area, style)));
    chart
        .marks()
        .window()
        .ifPresent(w -> around.block(MarkLayer.span(w, area).grown(style.gap() / 3)));
    if (chart.series().size() > 1) {
      chart.marks().window().ifPresent(w -> MarkLayer.edges(w, area).forEach(around::avoidIfCheap));
    }
    chart.marks().leads().ifPresent(s -> LeadLayer.avoid(s, area, style, around));
    new FlagLayer(chart, area, style).avoid(around);
  }

  private void avoidCurve(Series series) {
    PlotLine line = series.line();
    PlotLine.Run whole = new PlotLine.Run(0, line.size() - 1);
    List<Integer> kept = LineThinning.keep(line, whole, area, style.weights().curve());
    for (int k = 0; k + 1 < kept.size(); k++) {
      around.avoid(piece(line, kept.get(k), kept.get(k + 1)), series.pen());
    }
  }

  private Line2D piece(PlotLine line, int from, int to) {
    return new Line2D.Double(
        area.px(line.x(from)), area.py(line.y(from)), area.px(line.x(to)), area.py(line.y(to)));
  }

  /** Returns two forms: all lines of the label, and only the first if there is no room. */
  private List<Callout> holdLabels(Chart.Hold hold) {
    double x = area.px((hold.from() + hold.to()) / 2);
    double y = hold.isStretch() ? MarkLayer.bracket(hold, area, style).top() : area.py(hold.y());
    List<Callout.Side> sides = List.of(ABOVE, ABOVE_RIGHT, ABOVE_LEFT, RIGHT, BELOW, LEFT);
    List<Spot> spots = List.of(new Spot(x, y, 0));
    List<String> first = hold.label().subList(0, 1);
    return List.of(
        new Callout(spots, hold.label(), Palette.ACCENT, Optional.empty(), sides, true, 0),
        new Callout(spots, first, Palette.ACCENT, Optional.empty(), sides, true, FIRST_LINE_COST));
  }

  private Callout windowLabel(Chart.Window window) {
    Box span = MarkLayer.span(window, area);
    double x = (span.left() + span.right()) / 2;
    Spot spot = new Spot(x, span.top(), span.width() / 2);
    return new Callout(spot, window.label(), Palette.INK, List.of(ABOVE), true);
  }

  private Callout pointLabel(Chart.Point point) {
    boolean drop = point.guide() == Chart.Guide.DROP;
    return new Callout(
        new Spot(area.px(point.x()), area.py(point.y()), 0),
        point.label(),
        Palette.INK,
        drop ? OFF_FALLING : OFF_RISING,
        !drop);
  }

  /** Returns the labels of the points where the order of two sessions changes. */
  private List<Callout> crossings(LeadStrip leads) {
    List<Callout> callouts = new ArrayList<>();
    int last = leads.crossings().size() - 1;
    for (int i = 0; i <= last; i++) {
      LeadStrip.Crossing crossing = leads.crossings().get(i);
      Spot spot = new Spot(area.px(crossing.x()), area.py(0), 0);
      // Towards the outside, so that leaders do not cross.
      List<Callout.Side> sides = i < last ? LEFT_OF_CROSSING : RIGHT_OF_CROSSING;
      callouts.add(new Callout(spot, crossing.label(), Palette.ACCENT, sides, true));
    }
    return callouts;
  }
}
