package taperbook.draw.chart;

import taperbook.draw.style.Box;
import taperbook.draw.style.ChartStyle;

/**
 * Where the plot stands in the picture, and how data maps to it. Linear, y upwards.
 *
 * @param box the plot
 * @param x horizontal axis
 * @param y vertical axis
 */
public record Frame(Box box, Axis x, Axis y) {
  /** The frame of a chart in a style. */
  public static Frame of(Chart chart, ChartStyle style) {
    ChartStyle.Margins m = style.margins();
    Box box =
        new Box(
            m.left(),
            m.top(),
            style.width() - m.left() - m.right(),
            style.height() - m.top() - m.bottom());
    return new Frame(box, chart.x(), chart.y());
  }

  /** Pixel of an abscissa. */
  public double px(double value) {
    return box.left() + box.width() * (value - x.min()) / x.length();
  }

  /** Pixel of an ordinate. */
  public double py(double value) {
    return box.bottom() - box.height() * (value - y.min()) / y.length();
  }
}
