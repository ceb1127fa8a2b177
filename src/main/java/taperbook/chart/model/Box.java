package taperbook.chart.model;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;

/**
 * An axis-aligned rectangle in pixels.
 *
 * @param left left edge
 * @param top top edge
 * @param width width, not negative
 * @param height height, not negative
 */
public record Box(double left, double top, double width, double height) {
  /** Returns the right edge. */
  public double right() {
    return left + width;
  }

  /** Returns the bottom edge. */
  public double bottom() {
    return top + height;
  }

  /** Returns this box with a margin on all sides. */
  public Box grown(double margin) {
    return new Box(left - margin, top - margin, width + 2 * margin, height + 2 * margin);
  }

  /** Returns true if the two share some area. */
  public boolean overlaps(Box other) {
    return left < other.right()
        && other.left < right()
        && top < other.bottom()
        && other.top < bottom();
  }

  /** Returns true if this box is inside the other, edges included. */
  public boolean isInside(Box other) {
    return left >= other.left - 1e-6
        && top >= other.top - 1e-6
        && right() <= other.right() + 1e-6
        && bottom() <= other.bottom() + 1e-6;
  }

  /** Returns this box as a shape. */
  public Rectangle2D shape() {
    return new Rectangle2D.Double(left, top, width, height);
  }

  /** Returns true if the line intersects this box. */
  public boolean meets(Line2D line) {
    return shape().intersectsLine(line);
  }

  /** Returns the distance from a point to the nearest point of this box; 0 inside. */
  public double distanceTo(double x, double y) {
    return Math.hypot(x - nearestX(x), y - nearestY(y));
  }

  /** Returns the distance from a line; 0 if they intersect. */
  public double distanceTo(Line2D line) {
    if (meets(line)) {
      return 0;
    }
    double ends =
        Math.min(distanceTo(line.getX1(), line.getY1()), distanceTo(line.getX2(), line.getY2()));
    double tops = Math.min(line.ptSegDist(left, top), line.ptSegDist(right(), top));
    double feet = Math.min(line.ptSegDist(left, bottom()), line.ptSegDist(right(), bottom()));
    return Math.min(ends, Math.min(tops, feet));
  }

  /** Returns this box moved horizontally into another, if it is no wider. */
  public Box shiftedInto(Box region) {
    double atMost = Math.min(left, region.right() - width);
    return new Box(Math.max(region.left, atMost), top, width, height);
  }

  /** Returns the abscissa in this box that is nearest to {@code x}. */
  public double nearestX(double x) {
    return Math.max(left, Math.min(right(), x));
  }

  /** Returns the ordinate in this box that is nearest to {@code y}. */
  public double nearestY(double y) {
    return Math.max(top, Math.min(bottom(), y));
  }
}
