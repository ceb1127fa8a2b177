package taperbook.chart.library;

import taperbook.chart.model.Box;

/**
 * The position of a plot in the picture, and the mapping of data to it. Linear, y upwards.
 *
 * @param box the plot
 * @param x horizontal scale
 * @param y vertical scale
 */
record PanelPlotArea(Box box, PanelScale x, PanelScale y) {
  /** Returns the pixel of an abscissa. */
  double px(double value) {
    return box.left() + box.width() * x.share(value);
  }

  /** Returns the pixel of an ordinate. */
  double py(double value) {
    return box.bottom() - box.height() * y.share(value);
  }

  /** Returns the pixel of an abscissa, clamped to the plot. */
  double pxWithin(double value) {
    return box.nearestX(px(value));
  }

  /** Returns the pixel of an ordinate, clamped to the plot. */
  double pyWithin(double value) {
    return box.nearestY(py(value));
  }
}
