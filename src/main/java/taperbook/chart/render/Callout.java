package taperbook.chart.render;

import java.awt.Color;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Box;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Pen;
import taperbook.chart.model.Typeface;

/**
 * A label to be placed near its point, or near one of several.
 *
 * @param spots its possible points, best first; not empty
 * @param lines the text; the first line is bold, or all lines if it names a line
 * @param color colour of the first line
 * @param key pen of the line that it names, drawn as a sample before its text
 * @param sides sides of the point to try, best first
 * @param required whether to place it farther away with a leader if necessary; otherwise the label
 *     is omitted if there is no room
 * @param handicap cost of this form of the label relative to others
 */
record Callout(
    List<Spot> spots,
    List<String> lines,
    Color color,
    Optional<Pen> key,
    List<Side> sides,
    boolean required,
    double handicap) {
  /** Width of the line sample including its gap, in text sizes. */
  private static final double KEY = 2.6;

  public Callout {
    spots = List.copyOf(spots);
    lines = List.copyOf(lines);
    sides = List.copyOf(sides);
  }

  /** Creates a label for a single point. */
  public Callout(Spot spot, List<String> lines, Color color, List<Side> sides, boolean required) {
    this(List.of(spot), lines, color, Optional.empty(), sides, required, 0);
  }

  /**
   * A point that a label refers to.
   *
   * @param x pixel of the point
   * @param y pixel of the point
   * @param reach maximum horizontal offset of the label to either side
   */
  public record Spot(double x, double y, double reach) {
    /** Returns the abscissae to try, the point's own first. */
    double[] anchors() {
      if (reach == 0) {
        return new double[] {x};
      }
      return new double[] {x, x - reach / 4, x + reach / 4, x - reach / 2, x + reach / 2};
    }

    /** Returns the abscissa within reach that is nearest to the centre of a box. */
    double nearestX(Box box) {
      double middle = box.left() + box.width() / 2;
      return Math.max(x - reach, Math.min(middle, x + reach));
    }

    /** Returns the distance of a box from the point. */
    double distanceTo(Box box) {
      return box.distanceTo(x, y);
    }
  }

  /** Returns the spot nearest to a box. */
  Spot nearest(Box box) {
    return Collections.min(spots, Comparator.comparingDouble(s -> s.distanceTo(box)));
  }

  /** The side of a point on which the label is placed, as a direction right and down. */
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

    /** Returns true for directly above or below the point. */
    boolean isUpright() {
      return right == 0;
    }

    /** Returns the label's box with a gap from the point. */
    Box box(double x, double y, double width, double height, double gap) {
      double left = x - width / 2 + right * (width / 2 + gap);
      double top = y - height / 2 + down * (height / 2 + gap);
      return new Box(left, top, width, height);
    }
  }

  /**
   * A placed label.
   *
   * @param callout the label
   * @param spot its point
   * @param box its position
   */
  public record Placed(Callout callout, Spot spot, Box box) {}

  /** Returns width and height of the text, as a box at the origin. */
  public Box size(ChartStyle style) {
    double width = 0;
    for (int i = 0; i < lines.size(); i++) {
      width = Math.max(width, Typeface.width(lines.get(i), isBold(i), style.type().label()));
    }
    double text = width * style.type().slack();
    return new Box(0, 0, text + keyWidth(style), lines.size() * style.leading());
  }

  /** Returns true if a line of the text is bold: the first one, or all of a name. */
  public boolean isBold(int index) {
    return index == 0 || key.isPresent();
  }

  /** Returns the width of the line sample including its gap; 0 without one. */
  public double keyWidth(ChartStyle style) {
    return key.isPresent() ? KEY * style.type().label() : 0;
  }
}
