package taperbook.measure.simulate;

/**
 * What readings say for certain of one moment of a course that never falls: it had a value within
 * bounds at a time within bounds.
 *
 * <p>A reading anchors the course at its time, within half a step of its value. Where two
 * neighbouring readings show neighbouring steps of the display, the change of the display between
 * them is the sharper anchor: its value is the edge between the steps, its time lies between the
 * two.
 *
 * @param earliest earliest time, s
 * @param latest latest time, s
 * @param low lowest value
 * @param high highest value
 * @param habitual true if the value may sit at the lower edge because the reading was written down
 *     just as the display changed
 */
record Anchor(double earliest, double latest, double low, double high, boolean habitual) {
  double middleSecond() {
    return (earliest + latest) / 2;
  }

  double middleValue() {
    return (low + high) / 2;
  }

  Anchor within(double lowest, double highest) {
    double newLow = Math.min(high, Math.max(low, lowest));
    return new Anchor(earliest, latest, newLow, Math.max(newLow, Math.min(high, highest)), false);
  }
}
