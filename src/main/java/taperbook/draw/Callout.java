package taperbook.draw;

import java.awt.Color;
import java.util.List;

/**
 * A label that wants a place near the point it is about.
 *
 * @param x pixel of the point
 * @param y pixel of the point
 * @param reach how far to either side of the point the label may slide along what it is about
 * @param lines the text, its first line bold
 * @param color colour of the first line
 * @param sides sides of the point to try, best first
 * @param required whether a place farther away will do, with a leader; otherwise the label is left
 *     out where there is no room
 */
public record Callout(
    double x,
    double y,
    double reach,
    List<String> lines,
    Color color,
    List<Side> sides,
    boolean required) {
  /** Copies the lists. */
  public Callout {
    lines = List.copyOf(lines);
    sides = List.copyOf(sides);
  }

  /** Abscissae to try, the point's own first. */
  double[] anchors() {
    if (reach == 0) {
      return new double[] {x};
    }
    return new double[] {x, x - reach / 4, x + reach / 4, x - reach / 2, x + reach / 2};
  }

  /** The abscissa of what the label is about that lies nearest to the middle of a box. */
  double nearestX(Box box) {
    double middle = box.left() + box.width() / 2;
    return Math.max(x - reach, Math.min(middle, x + reach));
  }

  /** Sides of a point: where the label lies, as a direction right and down. */
  public enum Side {
    /** Straight above. */
    ABOVE(0, -1),
    /** Straight below. */
    BELOW(0, 1),
    /** To the right. */
    RIGHT(1, 0),
    /** To the left. */
    LEFT(-1, 0),
    /** Above and to the right. */
    ABOVE_RIGHT(1, -1),
    /** Above and to the left. */
    ABOVE_LEFT(-1, -1),
    /** Below and to the right. */
    BELOW_RIGHT(1, 1),
    /** Below and to the left. */
    BELOW_LEFT(-1, 1);

    private final int right;
    private final int down;

    Side(int right, int down) {
      this.right = right;
      this.down = down;
    }

    /** True if the label stands straight above or below the point. */
    boolean isUpright() {
      return right == 0;
    }

    /** The label's box if it keeps a gap from the point. */
    Box box(double x, double y, double width, double height, double gap) {
      double left = x - width / 2 + right * (width / 2 + gap);
      double top = y - height / 2 + down * (height / 2 + gap);
      return new Box(left, top, width, height);
    }
  }

  /**
   * A label in its place.
   *
   * @param callout what it says
   * @param box where it stands
   */
  public record Placed(Callout callout, Box box) {}

  /** Width and height of the text, as a box at the origin. */
  Box size(ChartStyle style) {
    double width = 0;
    for (int i = 0; i < lines.size(); i++) {
      width = Math.max(width, Typeface.width(lines.get(i), i == 0, style.type().label()));
    }
    return new Box(0, 0, width * style.type().slack(), lines.size() * style.leading());
  }
}
