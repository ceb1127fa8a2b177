package taperbook.chart.render;

import java.awt.geom.Line2D;
import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Box;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.render.Callout.Spot;

/**
 * Places labels one after the other: inside the region, never on another label or a blocked box,
 * off the curves if possible, and as near to their point as possible. Earlier labels have priority,
 * so the important ones come first.
 */
final class LabelPlacer {
  private static final double[] DISTANCES = {1, 1.6, 2.4, 3.8, 6};

  /** Maximum cost of placing an optional label; otherwise it is omitted. */
  private static final double MOST_IF_OPTIONAL = 18;

  private final Box region;
  private final ChartStyle style;
  private final Obstacles obstacles;

  /**
   * Creates a placer for one picture.
   *
   * @param region area that labels may not leave
   */
  public LabelPlacer(Box region, ChartStyle style) {
    this.region = region;
    this.style = style;
    this.obstacles = new Obstacles(style);
  }

  /** Returns the obstacles of labels. */
  public Obstacles obstacles() {
    return obstacles;
  }

  /** Places a label, or omits it if there is no room. */
  public Optional<Callout.Placed> place(Callout callout) {
    return place(List.of(callout));
  }

  /**
   * Places one of several forms of a label: the cheapest, including its handicap. Omits all if
   * there is no room for any.
   */
  public Optional<Callout.Placed> place(List<Callout> forms) {
    Choice best = best(forms);
    best.placed.ifPresent(
        placed -> {
          obstacles.block(placed.box());
          leader(placed).ifPresent(obstacles::avoidIfCheap);
        });
    return best.placed;
  }

  /** Returns the current difficulty of a label: the cost of its best place. */
  double difficulty(List<Callout> forms) {
    return best(forms).cost;
  }

  /** Returns the line from a label to its point, if the label is too far away without one. */
  public Optional<Line2D> leader(Callout.Placed placed) {
    Spot spot = placed.spot();
    Box box = placed.box();
    double fromX = spot.nearestX(box);
    if (box.distanceTo(fromX, spot.y()) <= 2.6 * style.gap()) {
      return Optional.empty();
    }
    double toX = box.nearestX(fromX);
    double toY = box.nearestY(spot.y());
    return Optional.of(new Line2D.Double(fromX, spot.y(), toX, toY));
  }

  private Choice best(List<Callout> forms) {
    Choice best = new Choice();
    for (Callout form : forms) {
      choose(form, best);
    }
    return best;
  }

  private void choose(Callout callout, Choice choice) {
    Box size = callout.size(style);
    for (int i = 0; i < callout.spots().size(); i++) {
      around(callout, i, size, choice);
    }
    if (callout.required() && choice.cost >= Obstacles.CURVE_COST) {
      scan(callout, size, choice);
    }
  }

  private void around(Callout callout, int index, Box size, Choice choice) {
    Spot spot = callout.spots().get(index);
    for (int d = 0; d < DISTANCES.length; d++) {
      for (int s = 0; s < callout.sides().size(); s++) {
        Callout.Side side = callout.sides().get(s);
        double gap = DISTANCES[d] * style.gap();
        for (double x : spot.anchors()) {
          Box box = side.box(x, spot.y(), size.width(), size.height(), gap);
          Box shifted = side.isUpright() ? box.shiftedInto(region) : box;
          double far = 1.5 * s + 4 * d + Math.min(3, index);
          consider(new Callout.Placed(callout, spot, shifted), far, choice);
        }
      }
    }
  }

  private void scan(Callout callout, Box size, Choice choice) {
    double step = style.gap();
    for (double top = region.top(); top + size.height() <= region.bottom(); top += step) {
      for (double left = region.left(); left + size.width() <= region.right(); left += step) {
        Box box = new Box(left, top, size.width(), size.height());
        Spot spot = callout.nearest(box);
        double far = 20 + spot.distanceTo(box) / style.gap();
        consider(new Callout.Placed(callout, spot, box), far, choice);
      }
    }
  }

  /** Accepts a place if it is better than the best so far. */
  private void consider(Callout.Placed placed, double far, Choice choice) {
    double most = placed.callout().required() ? Double.POSITIVE_INFINITY : MOST_IF_OPTIONAL;
    double before = far + placed.callout().handicap();
    double ofInterest = Math.min(most, choice.cost) - before;
    if (ofInterest > 0 && placed.box().isInside(region)) {
      double cost = obstacles.cost(placed, leader(placed), ofInterest) + before;
      if (cost < Math.min(most, choice.cost)) {
        choice.placed = Optional.of(placed);
        choice.cost = cost;
      }
    }
  }

  /** The best place so far. */
  private static final class Choice {
    private Optional<Callout.Placed> placed = Optional.empty();
    private double cost = Double.POSITIVE_INFINITY;
  }
}
