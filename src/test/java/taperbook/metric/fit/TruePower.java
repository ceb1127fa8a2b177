package taperbook.metric.fit;

/** A true charging curve of straight segments. */
final class TruePower {
  private final double firstSoc;
  private final double firstKilowatts;
  private final double[] breaks;
  private final double[] slopes;

  TruePower(double firstSoc, double firstKilowatts, double[] breaks, double[] slopes) {
    this.firstSoc = firstSoc;
    this.firstKilowatts = firstKilowatts;
    this.breaks = breaks.clone();
    this.slopes = slopes.clone();
  }

  double firstSoc() {
    return firstSoc;
  }

  double[] breaks() {
    return breaks.clone();
  }

  double[] slopes() {
    return slopes.clone();
  }

  double at(double soc) {
    double power = firstKilowatts + slopes[0] * (soc - firstSoc);
    for (int j = 0; j < breaks.length; j++) {
      power += (slopes[j + 1] - slopes[j]) * Math.max(0, soc - breaks[j]);
    }
    return power;
  }

  /** Rounds both displays to whole numbers, as a person records them. */
  TaperPoints read(double... socs) {
    double[] shown = new double[socs.length];
    double[] power = new double[socs.length];
    for (int i = 0; i < socs.length; i++) {
      shown[i] = Math.rint(socs[i]);
      power[i] = Math.rint(at(socs[i]));
    }
    return new TaperPoints(shown, power, 0.5, 0.5);
  }
}
