package taperbook.chart.render;

import java.awt.geom.Line2D;
import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Box;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.render.Callout.Spot;

/**
 * Finds places for labels, one after the other: inside the region, never on another label or a
 * blocked box, off the curves unless there is no other way, and as near to their point as that
 * allows. First come, first served, so the important ones come first.
 */
public final class LabelPlacer {
  private static final double[] DISTANCES = {1, 1.6, 2.4, 3.8, 6};

  /** A label that may be left out is, rather than stand far off or across what is drawn. */
  private static final double MOST_IF_OPTIONAL = 18;

  private final Box region;
  private final ChartStyle style;
  private final Obstacles obstacles;

  /**
   * A placer for one picture.
   *
   * @param region what no label may leave
   */
  public LabelPlacer(Box region, ChartStyle style) {
    this.region = region;
    this.style = style;
    this.obstacles = new Obstacles(style);
  }

  /** What labels keep off. */
  public Obstacles obstacles() {
    return obstacles;
  }

  /** Places a label, or leaves it out if there is no room for it. */
  public Optional<Callout.Placed> place(Callout callout) {
    return place(List.of(callout));
  }

  /**
   * Places one of several forms of a label: the one that costs least, its handicap included. Leaves
   * all out if there is no room for any.
   */
  public Optional<Callout.Placed> place(List<Callout> forms) {
    Choice best = best(forms);
    best.placed.ifPresent(
        placed -> {
          obstacles.block(placed.box());
          leader(placed).ifPresent(obstacles::keepOffLightly);
        });
    return best.placed;
  }

  /** How hard a label is to place as things stand: what its best place would cost. */
  double difficulty(List<Callout> forms) {
    return best(forms).cost;
  }

  /** The line from a label to its point, if the label stands so far away that it needs one. */
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

  /** Takes a place if it is better than the best so far. */
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
