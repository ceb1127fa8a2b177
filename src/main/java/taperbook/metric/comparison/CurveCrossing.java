package taperbook.metric.comparison;

import java.util.ArrayList;
import java.util.List;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;

/**
 * Locates where two power curves cross: between a stretch in which one leads and the next in which
 * the other does. The value is where the difference of the readings changes sign (the middle one of
 * several such places); the interval runs from the end of the first stretch to the start of the
 * second.
 */
final class CurveCrossing {
  private final Band band;
  private final List<Double> changes = new ArrayList<>();
  private double lastSign;
  private double lastPercent;
  private double lastValue;
  private double firstZero = Double.NaN;

  private CurveCrossing(Band band) {
    this.band = band;
  }

  /** Returns the crossings, in order, %. */
  static List<Estimate> all(Band band, List<LeadStretches.Span> spans) {
    List<Estimate> crossings = new ArrayList<>();
    List<LeadStretches.Span> led = spans.stream().filter(LeadStretches.Span::isLed).toList();
    for (int k = 1; k < led.size(); k++) {
      LeadStretches.Span before = led.get(k - 1);
      LeadStretches.Span after = led.get(k);
      if (before.order() != after.order()) {
        double value = new CurveCrossing(band).between(before.to(), after.from());
        crossings.add(new Estimate(value, new Interval(before.to(), after.from())));
      }
    }
    return crossings;
  }

  private double between(double from, double to) {
    if (to <= from) {
      return from;
    }
    take(from, value(from));
    for (int i = 0; i < band.size(); i++) {
      if (band.percent(i) > from && band.percent(i) < to) {
        take(band.percent(i), band.value(i));
      }
    }
    take(to, value(to));
    return changes.isEmpty() ? (from + to) / 2 : changes.get(changes.size() / 2);
  }

  private void take(double percent, double value) {
    double sign = Math.signum(value);
    if (sign == 0) {
      firstZero = Double.isNaN(firstZero) ? percent : firstZero;
    } else {
      if (sign == -lastSign) {
        changes.add(
            Double.isNaN(firstZero)
                ? lastPercent + (percent - lastPercent) * lastValue / (lastValue - value)
                : (firstZero + lastPercent) / 2);
      }
      lastSign = sign;
      firstZero = Double.NaN;
    }
    lastPercent = percent;
    lastValue = value;
  }

  private double value(double percent) {
    int i = 1;
    while (i < band.size() - 1 && band.percent(i) < percent) {
      i++;
    }
    double share = (percent - band.percent(i - 1)) / (band.percent(i) - band.percent(i - 1));
    return band.value(i - 1) + share * (band.value(i) - band.value(i - 1));
  }
}
