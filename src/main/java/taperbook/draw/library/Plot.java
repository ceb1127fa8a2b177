package taperbook.draw.library;

import taperbook.draw.style.Box;

/**
 * Where a plot stands in the picture, and how data maps to it. Linear, y upwards.
 *
 * @param box the plot
 * @param x horizontal scale
 * @param y vertical scale
 */
record Plot(Box box, Scale x, Scale y) {
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
