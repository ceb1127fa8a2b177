package taperbook.chart.render;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Box;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Pen;
import taperbook.chart.render.Callout.Spot;

/** The obstacles of labels with their costs. */
final class Obstacles {
  /** Cost of overlapping a curve: more than any distance from the point. */
  static final double CURVE_COST = 60;

  private static final double LIGHT_COST = 4;
  private static final double STRAY_COST = 8;
  private static final double MIX_UP_COST = 24;
  private static final double LEADER_COST = 10;

  private final ChartStyle style;
  private final List<Piece> curves = new ArrayList<>();
  private final List<Line2D> light = new ArrayList<>();
  private final List<Box> blocked = new ArrayList<>();

  Obstacles(ChartStyle style) {
    this.style = style;
  }

  /**
   * A segment of a curve.
   *
   * @param line the segment
   * @param pen pen of the curve
   */
  private record Piece(Line2D line, Pen pen) {}

  /** Adds a segment of a curve, which labels avoid if possible. */
  public void avoid(Line2D piece, Pen pen) {
    curves.add(new Piece(piece, pen));
  }

  /** Adds a thin line, which labels avoid at low cost. */
  public void avoidIfCheap(Line2D line) {
    light.add(line);
  }

  /** Adds a box that no label may overlap. */
  public void block(Box box) {
    blocked.add(box);
  }

  /**
   * Returns the cost of a place: 0 if it is perfect, infinite if it is impossible or at least as
   * expensive as the limit.
   */
  double cost(Callout.Placed placed, Optional<Line2D> leader, double ofInterest) {
    Box box = placed.box();
    Box roomy = box.grown(0.6 * style.gap());
    if (blocked.stream().anyMatch(roomy::overlaps)) {
      return Double.POSITIVE_INFINITY;
    }
    Box near = box.grown(style.gap() / 3);
    Box offCurve = near.grown(style.weights().dot());
    double cost = curves.stream().anyMatch(p -> offCurve.meets(p.line())) ? CURVE_COST : 0;
    cost += LIGHT_COST * light.stream().filter(near::meets).count();
    cost += leader.map(l -> leaderCost(l, placed)).orElseGet(() -> strayCost(placed));
    if (cost >= ofInterest) {
      return Double.POSITIVE_INFINITY;
    }
    return cost + placed.callout().key().map(pen -> mixUpCost(pen, box, leader)).orElse(0.0);
  }

  private double leaderCost(Line2D leader, Callout.Placed placed) {
    Spot spot = placed.spot();
    // A leader may touch its own point.
    long met =
        blocked.stream()
            .filter(b -> b.distanceTo(spot.x(), spot.y()) > 0)
            .filter(b -> b.meets(leader))
            .count();
    return LEADER_COST * met;
  }

  private double strayCost(Callout.Placed placed) {
    Spot spot = placed.spot();
    double own = spot.distanceTo(placed.box());
    return STRAY_COST * light.stream().filter(l -> isStray(l, placed.box(), spot, own)).count();
  }

  /**
   * Returns true if the line belongs to another mark and is nearer to the label than its own point.
   */
  private static boolean isStray(Line2D line, Box box, Spot spot, double own) {
    return line.ptSegDist(spot.x(), spot.y()) > 1 && box.distanceTo(line) < own - 1;
  }

  /**
   * Returns the cost of confusing a label with that of another line, or of crossing a line by its
   * leader.
   */
  private double mixUpCost(Pen pen, Box box, Optional<Line2D> leader) {
    if (leader.isPresent()) {
      Line2D line = leader.get();
      return LEADER_COST
          * curves.stream().filter(p -> p.pen() != pen && p.line().intersectsLine(line)).count();
    }
    double own = distance(box, true, pen);
    double other = distance(box, false, pen);
    return other < own + style.gap() / 2 ? MIX_UP_COST : 0;
  }

  private double distance(Box box, boolean own, Pen pen) {
    return curves.stream()
        .filter(p -> (p.pen() == pen) == own)
        .mapToDouble(p -> box.distanceTo(p.line()))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
