package taperbook.chart.model;

import java.util.List;

/**
 * One line of a chart.
 *
 * @param line the line
 * @param pen how it is drawn
 * @param name its name, letter first; empty if the chart's title names it
 */
public record Series(PlotLine line, Pen pen, String name) {
  /** Creates a line that the chart's title names. */
  Series(PlotLine line, Pen pen) {
    this(line, pen, "");
  }

  /** Returns true if the line shows the values that its readings allow. */
  boolean hasBand() {
    return !pen.isOneOfSeveral();
  }

  /** Returns the letter of its session. */
  public String letter() {
    return name.substring(0, 1);
  }

  /**
   * Returns the indices of the readings with a marker: all, or spaced ones if they would overlap.
   *
   * @param apart minimum distance between markers of a dense line, on the horizontal axis
   */
  public List<Integer> marked(double apart) {
    if (!pen.marksReadings() || (!line.hasDots() && !pen.isOneOfSeveral())) {
      return List.of();
    }
    return line.hasDots() ? line.every(0) : line.every(apart);
  }
}
