package taperbook.draw;

import java.util.List;
import java.util.Optional;

/**
 * What one chart shows, in data units; how it looks is the painter's business.
 *
 * @param id stem of the figure's files
 * @param title title of the figure, and what stands below it on film
 * @param x horizontal axis
 * @param y vertical axis
 * @param line the curve
 * @param marks what is marked in the plot
 */
record Chart(String id, Title title, Axis x, Axis y, PlotLine line, Marks marks) {
  /** A band narrower than this share of the axis would hide below the line, in either style. */
  private static final double VISIBLE = 0.012;

  /**
   * Title of the figure.
   *
   * @param text the title
   * @param subtitle what stands below it on film
   */
  record Title(String text, String subtitle) {}

  /**
   * What is marked in the plot.
   *
   * @param hold the stretch at peak, or the peak alone
   * @param window a stretch of the horizontal axis with the time it took
   * @param points marks on the curve
   */
  record Marks(Optional<Hold> hold, Optional<Window> window, List<Point> points) {
    /** Copies the points. */
    Marks {
      points = List.copyOf(points);
    }
  }

  /**
   * The stretch at peak.
   *
   * @param from abscissa of its start
   * @param to abscissa of its end; equal to {@code from} if only the peak is known
   * @param y the peak
   * @param label the label's lines, the first one bold
   */
  record Hold(double from, double to, double y, List<String> label) {
    /** Copies the label. */
    Hold {
      label = List.copyOf(label);
    }

    boolean isStretch() {
      return to > from;
    }
  }

  /**
   * A stretch of the horizontal axis.
   *
   * @param from abscissa of its start
   * @param to abscissa of its end
   * @param label the label's lines, the first one bold
   */
  record Window(double from, double to, List<String> label) {
    /** Copies the label. */
    Window {
      label = List.copyOf(label);
    }
  }

  /**
   * A mark on the curve.
   *
   * @param x abscissa
   * @param y ordinate
   * @param guide the line that leads to it
   * @param label the label's lines, the first one bold
   */
  record Point(double x, double y, Guide guide, List<String> label) {
    /** Copies the label. */
    Point {
      label = List.copyOf(label);
    }
  }

  /** The line that leads to a mark. */
  enum Guide {
    /** From the horizontal axis up to the curve; the label may be left out if there is no room. */
    DROP,
    /** From the vertical axis across to the curve. */
    ACROSS
  }

  /** True if the band shows beside the curve's own line. */
  boolean hasVisibleBand() {
    return line.widestBand() > VISIBLE * y.max();
  }

  /** How to read the drawing, in a line. */
  String note() {
    StringBuilder note = new StringBuilder();
    if (!line.isComputed()) {
      note.append(line.hasDots() ? "Dots: readings." : "Line: " + line.size() + " readings.");
    }
    if (line.wideGaps() > 0) {
      note.append(" Dashes: long gaps.");
    }
    if (hasVisibleBand()) {
      note.append(" Tint: bounds.");
    }
    return note.toString().strip();
  }
}
