package taperbook.chart.model;

import java.util.List;

/**
 * One line of a chart.
 *
 * @param line the line
 * @param pen how it is drawn
 * @param name what it is called, letter first; empty if the chart's title says it
 */
public record Series(PlotLine line, Pen pen, String name) {
  /** A line that the chart's title names. */
  Series(PlotLine line, Pen pen) {
    this(line, pen, "");
  }

  /** True if the line shows which values its readings allow. */
  boolean hasBand() {
    return !pen.isOneOfSeveral();
  }

  /** The letter of its session. */
  public String letter() {
    return name.substring(0, 1);
  }

  /**
   * Indices of the readings that get a marker: all, or where they would hide each other one every
   * so often.
   *
   * @param apart least distance between markers of a dense line, on the horizontal axis
   */
  public List<Integer> marked(double apart) {
    if (!pen.marksReadings() || (!line.hasDots() && !pen.isOneOfSeveral())) {
      return List.of();
    }
    return line.hasDots() ? line.every(0) : line.every(apart);
  }
}
