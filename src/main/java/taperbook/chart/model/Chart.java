package taperbook.chart.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What one chart shows, in data units; how it looks is the painter's business.
 *
 * @param id stem of the figure's files
 * @param title the words around it
 * @param x horizontal axis
 * @param y vertical axis
 * @param series its lines, the most important one first; not empty
 * @param marks what is marked in the plot
 * @param below a second panel below this one, on the same horizontal axis
 */
public record Chart(
    String id,
    Heading title,
    Axis x,
    Axis y,
    List<Series> series,
    Marks marks,
    Optional<Chart> below) {
  /** A band narrower than this share of the axis would hide below the line, in either style. */
  private static final double VISIBLE = 0.012;

  /** A dense line that ran over the whole axis would have as many markers. */
  private static final int MARKERS = 16;

  /** Copies the lines. */
  public Chart {
    series = List.copyOf(series);
  }

  /** A chart of one panel. */
  public Chart(String id, Heading title, Axis x, Axis y, List<Series> series, Marks marks) {
    this(id, title, x, y, series, marks, Optional.empty());
  }

  /** A chart of one curve, each of whose readings is marked. */
  public Chart(String id, Heading title, Axis x, Axis y, PlotLine line, Marks marks) {
    this(id, title, x, y, List.of(new Series(line, Pen.SINGLE)), marks);
  }

  /** The curve, or the first of several. */
  public PlotLine line() {
    return series.get(0).line();
  }

  /** This chart over another, on the same horizontal axis. */
  public Chart over(Chart other) {
    return new Chart(id, title, x, y, series, marks, Optional.of(other));
  }

  /** This chart and the one below it. */
  public List<Chart> panels() {
    return Stream.concat(Stream.of(this), below.stream()).toList();
  }

  /** The words around the chart, with how to read it where there is room. */
  public Heading heading(ChartStyle style) {
    return title.with(Note.of(this), style);
  }

  /**
   * What is marked in the plot.
   *
   * @param hold the stretch at peak, or the peak alone
   * @param window a stretch of the horizontal axis with the time it took, or of several lines the
   *     stretch that they have in common
   * @param points marks on the curve
   * @param standings which of two sessions is ahead where
   * @param flags numbers along the top that a key tells, from left to right
   */
  public record Marks(
      Optional<Hold> hold,
      Optional<Window> window,
      List<Point> points,
      Optional<LeadStrip> standings,
      List<Flag> flags) {
    /** Copies the lists. */
    public Marks {
      points = List.copyOf(points);
      flags = List.copyOf(flags);
    }

    /** Marks without flags. */
    public Marks(
        Optional<Hold> hold,
        Optional<Window> window,
        List<Point> points,
        Optional<LeadStrip> standings) {
      this(hold, window, points, standings, List.of());
    }

    /** The marks of a single curve. */
    public Marks(Optional<Hold> hold, Optional<Window> window, List<Point> points) {
      this(hold, window, points, Optional.empty());
    }

    /** The stretch that several lines have in common, if there is one. */
    public static Marks common(Optional<Window> window) {
      return new Marks(Optional.empty(), window, List.of());
    }

    /** Who is ahead where. */
    public static Marks standings(LeadStrip standings) {
      return new Marks(Optional.empty(), Optional.empty(), List.of(), Optional.of(standings));
    }
  }

  /**
   * The stretch at peak.
   *
   * @param from abscissa of its start
   * @param to abscissa of its end; equal to {@code from} if only the peak is known
   * @param y the peak
   * @param label the label's lines, the first one bold
   * @param brief what a thumbnail prints in their place
   */
  public record Hold(double from, double to, double y, List<String> label, String brief) {
    /** Copies the label. */
    public Hold {
      label = List.copyOf(label);
    }

    /** A stretch whose label's first line is short enough for a thumbnail. */
    public Hold(double from, double to, double y, List<String> label) {
      this(from, to, y, label, label.get(0));
    }

    public boolean isStretch() {
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
  public record Window(double from, double to, List<String> label) {
    /** Copies the label. */
    public Window {
      label = List.copyOf(label);
    }
  }

  /**
   * A number along the top of the plot.
   *
   * @param x abscissa
   * @param number the number, from 1
   */
  public record Flag(double x, int number) {}

  /**
   * A mark on the curve.
   *
   * @param x abscissa
   * @param y ordinate
   * @param guide the line that leads to it
   * @param label the label's lines, the first one bold
   */
  public record Point(double x, double y, Guide guide, List<String> label) {
    /** Copies the label. */
    public Point {
      label = List.copyOf(label);
    }
  }

  /** The line that leads to a mark. */
  public enum Guide {
    /** From the horizontal axis up to the curve; the label may be left out if there is no room. */
    DROP,
    /** From the vertical axis across to the curve. */
    ACROSS
  }

  /** True if the band shows beside the curve's own line. */
  public boolean hasVisibleBand() {
    return series.get(0).hasBand() && line().band().widestBand() > VISIBLE * y.length();
  }

  /** Least distance between markers of a dense line, on the horizontal axis. */
  public double markersApart() {
    return x.length() / MARKERS;
  }
}
