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
 * A label that wants a place near the point it is about, or near one of several.
 *
 * @param spots what it is about, the best place first; not empty
 * @param lines the text, its first line bold; all of it if it names a line
 * @param color colour of the first line
 * @param key the pen of the line that it names, a piece of which stands before its text
 * @param sides sides of the point to try, best first
 * @param required whether a place farther away will do, with a leader; otherwise the label is left
 *     out where there is no room
 * @param handicap what it costs to prefer this form of the label to another
 */
public record Callout(
    List<Spot> spots,
    List<String> lines,
    Color color,
    Optional<Pen> key,
    List<Side> sides,
    boolean required,
    double handicap) {
  /** Width of the piece of line before a text with the gap after it, in sizes of the text. */
  private static final double KEY = 2.6;

  /** Copies the lists. */
  public Callout {
    spots = List.copyOf(spots);
    lines = List.copyOf(lines);
    sides = List.copyOf(sides);
  }

  /** A label about a single spot. */
  public Callout(Spot spot, List<String> lines, Color color, List<Side> sides, boolean required) {
    this(List.of(spot), lines, color, Optional.empty(), sides, required, 0);
  }

  /**
   * What a label is about.
   *
   * @param x pixel of the point
   * @param y pixel of the point
   * @param reach how far to either side of the point the label may slide along what it is about
   */
  public record Spot(double x, double y, double reach) {
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

    /** How far a box lies from the point. */
    double distanceTo(Box box) {
      return box.distanceTo(x, y);
    }
  }

  /** The spot nearest to a box. */
  Spot nearest(Box box) {
    return Collections.min(spots, Comparator.comparingDouble(s -> s.distanceTo(box)));
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
   * @param spot what it is about
   * @param box where it stands
   */
  public record Placed(Callout callout, Spot spot, Box box) {}

  /** Width and height of the text, as a box at the origin. */
  public Box size(ChartStyle style) {
    double width = 0;
    for (int i = 0; i < lines.size(); i++) {
      width = Math.max(width, Typeface.width(lines.get(i), isBold(i), style.type().label()));
    }
    double text = width * style.type().slack();
    return new Box(0, 0, text + keyWidth(style), lines.size() * style.leading());
  }

  /** True if a line of the text is bold: the first one, or all of a name. */
  public boolean isBold(int index) {
    return index == 0 || key.isPresent();
  }

  /** Width of the piece of line before the text, with its gap; 0 without one. */
  public double keyWidth(ChartStyle style) {
    return key.isPresent() ? KEY * style.type().label() : 0;
  }
}
