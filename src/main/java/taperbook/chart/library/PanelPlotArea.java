package taperbook.chart.library;

import taperbook.chart.model.Box;

/**
 * Where a plot stands in the picture, and how data maps to it. Linear, y upwards.
 *
 * @param box the plot
 * @param x horizontal scale
 * @param y vertical scale
 */
record PanelPlotArea(Box box, PanelScale x, PanelScale y) {
  /** Pixel of an abscissa. */
  double px(double value) {
    return box.left() + box.width() * x.share(value);
  }

  /** Pixel of an ordinate. */
  double py(double value) {
    return box.bottom() - box.height() * y.share(value);
  }

  /** As {@link #px}, kept within the plot. */
  double pxWithin(double value) {
    return box.nearestX(px(value));
  }

  /** As {@link #py}, kept within the plot. */
  double pyWithin(double value) {
    return box.nearestY(py(value));
  }
}
