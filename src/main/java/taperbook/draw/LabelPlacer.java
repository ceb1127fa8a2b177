package taperbook.draw;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds places for labels, one after the other: inside the region, never on another label or a
 * blocked box, off the curve unless there is no other way, and as near to their point as that
 * allows. First come, first served, so the important ones come first.
 */
public final class LabelPlacer {
  private static final double[] DISTANCES = {1, 1.6, 2.4, 3.8, 6};
  private static final double CURVE_COST = 60;
  private static final double LIGHT_COST = 4;
  private static final double STRAY_COST = 8;

  /** A label that may be left out is, rather than stand far off or across what is drawn. */
  private static final double MOST_IF_OPTIONAL = 18;

  private final Box region;
  private final ChartStyle style;
  private final List<Line2D> curve = new ArrayList<>();
  private final List<Line2D> light = new ArrayList<>();
  private final List<Box> blocked = new ArrayList<>();

  /**
   * A placer for one picture.
   *
   * @param region what no label may leave
   */
  public LabelPlacer(Box region, ChartStyle style) {
    this.region = region;
    this.style = style;
  }

  /** Names a piece of the curve, which labels keep off if they can. */
  public void keepOff(Line2D piece) {
    curve.add(piece);
  }

  /** Names a thin line, which labels keep off if it costs them little. */
  public void keepOffLightly(Line2D line) {
    light.add(line);
  }

  /** Names a box that no label may touch. */
  public void block(Box box) {
    blocked.add(box);
  }

  /** Places a label, or leaves it out if there is no room for it. */
  public Optional<Callout.Placed> place(Callout callout) {
    Box size = callout.size(style);
    Choice choice = new Choice();
    for (int d = 0; d < DISTANCES.length; d++) {
      for (int s = 0; s < callout.sides().size(); s++) {
        Callout.Side side = callout.sides().get(s);
        double gap = DISTANCES[d] * style.gap();
        for (double x : callout.anchors()) {
          Box box = side.box(x, callout.y(), size.width(), size.height(), gap);
          Box shifted = side.isUpright() ? box.shiftedInto(region) : box;
          choice.consider(shifted, cost(callout, shifted) + 1.5 * s + 4 * d);
        }
      }
    }
    if (callout.required() && choice.cost >= CURVE_COST) {
      scan(callout, size, choice);
    }
    if (!(choice.cost < (callout.required() ? Double.POSITIVE_INFINITY : MOST_IF_OPTIONAL))) {
      return Optional.empty();
    }
    Callout.Placed placed = new Callout.Placed(callout, choice.box);
    blocked.add(choice.box);
    leader(placed).ifPresent(light::add);
    return Optional.of(placed);
  }

  /** The line from a label to its point, if the label stands so far away that it needs one. */
  public Optional<Line2D> leader(Callout.Placed placed) {
    Callout callout = placed.callout();
    Box box = placed.box();
    double fromX = callout.nearestX(box);
    if (box.distanceTo(fromX, callout.y()) <= 2.6 * style.gap()) {
      return Optional.empty();
    }
    double toX = box.nearestX(fromX);
    double toY = box.nearestY(callout.y());
    return Optional.of(new Line2D.Double(fromX, callout.y(), toX, toY));
  }

  private void scan(Callout callout, Box size, Choice choice) {
    double step = style.gap();
    for (double top = region.top(); top + size.height() <= region.bottom(); top += step) {
      for (double left = region.left(); left + size.width() <= region.right(); left += step) {
        Box box = new Box(left, top, size.width(), size.height());
        double far = box.distanceTo(callout.x(), callout.y()) / style.gap();
        choice.consider(box, cost(callout, box) + 20 + far);
      }
    }
  }

  private double cost(Callout callout, Box box) {
    Box roomy = box.grown(0.6 * style.gap());
    if (!box.isInside(region) || blocked.stream().anyMatch(roomy::overlaps)) {
      return Double.POSITIVE_INFINITY;
    }
    Box near = box.grown(style.gap() / 3);
    Box offCurve = near.grown(style.weights().dot());
    double cost = curve.stream().anyMatch(offCurve::meets) ? CURVE_COST : 0;
    cost += LIGHT_COST * light.stream().filter(near::meets).count();
    Optional<Line2D> leader = leader(new Callout.Placed(callout, box));
    if (leader.isPresent()) {
      // Its own point is where a leader must end.
      cost +=
          10
              * blocked.stream()
                  .filter(b -> b.distanceTo(callout.x(), callout.y()) > 0)
                  .filter(b -> b.meets(leader.get()))
                  .count();
    } else {
      double own = box.distanceTo(callout.x(), callout.y());
      cost += STRAY_COST * light.stream().filter(l -> isStray(l, box, callout, own)).count();
    }
    return cost;
  }

  /** True if the line belongs to another mark and lies nearer to the label than its own point. */
  private static boolean isStray(Line2D line, Box box, Callout callout, double own) {
    return line.ptSegDist(callout.x(), callout.y()) > 1 && box.distanceTo(line) < own - 1;
  }

  /** The best place so far. */
  private static final class Choice {
    private Box box = new Box(0, 0, 0, 0);
    private double cost = Double.POSITIVE_INFINITY;

    private void consider(Box candidate, double candidateCost) {
      if (candidateCost < cost) {
        box = candidate;
        cost = candidateCost;
      }
    }
  }
}
