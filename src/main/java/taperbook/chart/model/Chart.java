package taperbook.chart.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The content of one chart in data units; the painter determines its appearance.
 *
 * @param id stem of the figure's files
 * @param title its title texts
 * @param x horizontal axis
 * @param y vertical axis
 * @param series its lines, most important first; not empty
 * @param marks marks in the plot
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
  /**
   * Minimum visible width of a band as a share of the axis; narrower ones are hidden by the line.
   */
  private static final double VISIBLE = 0.012;

  /** Number of markers of a dense line over the whole axis. */
  private static final int MARKERS = 16;

  public Chart {
    series = List.copyOf(series);
  }

  /** Creates a chart of one panel. */
  public Chart(String id, Heading title, Axis x, Axis y, List<Series> series, Marks marks) {
    this(id, title, x, y, series, marks, Optional.empty());
  }

  /** Creates a chart of one curve with a marker at each reading. */
  public Chart(String id, Heading title, Axis x, Axis y, PlotLine line, Marks marks) {
    this(id, title, x, y, List.of(new Series(line, Pen.SINGLE)), marks);
  }

  /** Returns the curve, or the first of several. */
  public PlotLine line() {
    return series.get(0).line();
  }

  /** Returns this chart above another, on the same horizontal axis. */
  public Chart over(Chart other) {
    return with(series, marks, Optional.of(other));
  }

  /** Returns this chart with other lines, marks, and panel below. */
  Chart with(List<Series> otherSeries, Marks otherMarks, Optional<Chart> otherBelow) {
    return new Chart(id, title, x, y, otherSeries, otherMarks, otherBelow);
  }

  /** Returns this chart and the one below it. */
  public List<Chart> panels() {
    return Stream.concat(Stream.of(this), below.stream()).toList();
  }

  /** Returns the title texts, with the reading note if there is room. */
  public Heading heading(ChartStyle style) {
    return title.with(Note.of(this), style);
  }

  /**
   * The marks in the plot.
   *
   * @param hold the stretch near the peak, or only the peak
   * @param window a stretch of the horizontal axis with its duration, or for several lines their
   *     common stretch
   * @param points marks on the curve
   * @param leads stretches in which either of two sessions is ahead
   * @param flags numbers along the top that a key explains, from left to right
   */
  public record Marks(
      Optional<Hold> hold,
      Optional<Window> window,
      List<Point> points,
      Optional<LeadStrip> leads,
      List<Flag> flags) {
    public Marks {
      points = List.copyOf(points);
      flags = List.copyOf(flags);
    }

    /** Creates marks without flags. */
    public Marks(
        Optional<Hold> hold,
        Optional<Window> window,
        List<Point> points,
        Optional<LeadStrip> leads) {
      this(hold, window, points, leads, List.of());
    }

    /** Creates the marks of a single curve. */
    public Marks(Optional<Hold> hold, Optional<Window> window, List<Point> points) {
      this(hold, window, points, Optional.empty());
    }

    /** Creates the mark of the common stretch of several lines, if there is one. */
    public static Marks common(Optional<Window> window) {
      return new Marks(Optional.empty(), window, List.of());
    }

    /** Creates the marks of which session is ahead. */
    public static Marks leads(LeadStrip leads) {
      return new Marks(Optional.empty(), Optional.empty(), List.of(), Optional.of(leads));
    }
  }

  /**
   * The stretch near the peak.
   *
   * @param from abscissa of its start
   * @param to abscissa of its end; equal to {@code from} if only the peak is known
   * @param y the peak
   * @param label the label's lines, the first one bold
   * @param brief the label of a thumbnail
   */
  public record Hold(double from, double to, double y, List<String> label, String brief) {
    public Hold {
      label = List.copyOf(label);
    }

    /** Creates a stretch whose label's first line is short enough for a thumbnail. */
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
   * @param guide its guide line
   * @param label the label's lines, the first one bold
   */
  public record Point(double x, double y, Guide guide, List<String> label) {
    public Point {
      label = List.copyOf(label);
    }
  }

  /** The guide line of a mark. */
  public enum Guide {
    /** From the horizontal axis up to the curve; the label is optional. */
    DROP,
    /** From the vertical axis across to the curve. */
    ACROSS
  }

  /** Returns true if the band is visible next to the curve's own line. */
  public boolean hasVisibleBand() {
    return series.get(0).hasBand() && line().band().widestBand() > VISIBLE * y.length();
  }

  /** Returns the minimum distance between markers of a dense line, on the horizontal axis. */
  public double markersApart() {
    return x.length() / MARKERS;
  }
}
