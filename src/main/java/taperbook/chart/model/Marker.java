package taperbook.chart.model;

import java.awt.Shape;
import java.awt.geom.Path2D;

/** The marker shapes of readings: they differ in outline, and adjacent ones also in fill. */
public enum Marker {
  DOT(true),
  SQUARE(false, -0.95, -0.95, 0.95, -0.95, 0.95, 0.95, -0.95, 0.95),
  TRIANGLE(true, 0, -1.25, 1.15, 0.85, -1.15, 0.85),
  DIAMOND(false, 0, -1.4, 1.4, 0, 0, 1.4, -1.4, 0),
  CROSS(true),
  WEDGE(false, 0, 1.25, 1.15, -0.85, -1.15, -0.85);

  private final boolean filled;
  private final double[] corners;

  Marker(boolean filled, double... corners) {
    this.filled = filled;
    this.corners = corners.clone();
  }

  /** Returns true if the shape is filled with its line's colour, false if only outlined. */
  public boolean isFilled() {
    return filled;
  }

  /** Returns the shape around a point; {@code radius} is that of a dot of the same weight. */
  public Shape at(double x, double y, double radius) {
    return switch (this) {
      case DOT -> Brush.circle(x, y, radius);
      case CROSS -> cross(x, y, radius);
      default -> polygon(x, y, radius, corners);
    };
  }

  private static Shape polygon(double x, double y, double radius, double... corners) {
    Path2D path = new Path2D.Double();
    path.moveTo(x + radius * corners[0], y + radius * corners[1]);
    for (int i = 2; i < corners.length; i += 2) {
      path.lineTo(x + radius * corners[i], y + radius * corners[i + 1]);
    }
    path.closePath();
    return path;
  }

  /** Returns a diagonal cross with thick bars, so that it can be filled like the others. */
  private static Shape cross(double x, double y, double radius) {
    double in = 0.45;
    double out = 1.25;
    double tip = out - in;
    return polygon(
        x, y, radius, 0, -in, tip, -out, out, -tip, in, 0, out, tip, tip, out, 0, in, -tip, out,
        -out, tip, -in, 0, -out, -tip, -tip, -out);
  }
}
