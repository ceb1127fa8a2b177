package taperbook.chart.library;

import taperbook.result.Curve;

/**
 * One session among small multiples.
 *
 * @param title the car
 * @param subtitle the day, and a distinguishing detail
 * @param curve power in kW over state of charge in %, may have no points
 * @param peak the formatted peak, empty if there is none
 */
record Panel(String title, String subtitle, Curve curve, String peak) {
  /** Returns the index of the curve's first highest point, or -1 if it has none. */
  int peakIndex() {
    int at = curve.size() > 0 ? 0 : -1;
    for (int i = 1; i < curve.size(); i++) {
      at = curve.y(i) > curve.y(at) ? i : at;
    }
    return at;
  }

  /** Returns true if the curve has a wide gap. */
  boolean hasGaps() {
    for (int i = 0; i + 1 < curve.size(); i++) {
      if (curve.wideGapAfter(i)) {
        return true;
      }
    }
    return false;
  }
}
