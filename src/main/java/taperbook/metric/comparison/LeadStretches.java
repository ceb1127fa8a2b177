package taperbook.metric.comparison;

import java.util.ArrayList;
import java.util.List;
import taperbook.result.Stretch.Order;

/**
 * Divides a window of state of charge by the band of the difference: the first session is ahead
 * where the whole band is above zero, behind where it is below, else undecided. Edges are where the
 * band, linear between grid points, crosses zero.
 *
 * <p>A lead over less than 1 %, or less than a fifth of a narrow window, counts as undecided: the
 * readings do not resolve it.
 */
final class LeadStretches {
  private static final double LEAST_PERCENT = 1;
  private static final double LEAST_SHARE = 0.2;

  /** Differences below this are floating-point noise, % or kW. */
  private static final double NOISE = 1e-9;

  /**
   * One stretch.
   *
   * @param order which session takes more power
   * @param from lower edge, %
   * @param to upper edge, %
   */
  record Span(Order order, double from, double to) {
    boolean isLed() {
      return order != Order.UNDECIDED;
    }

    double width() {
      return to - from;
    }
  }

  private final Band band;
  private final List<Span> spans = new ArrayList<>();

  private LeadStretches(Band band) {
    this.band = band;
  }

  /** Returns the stretches in order, without gap or overlap; neighbours differ in order. */
  static List<Span> of(Band band) {
    LeadStretches found = new LeadStretches(band);
    found.part();
    double window = band.percent(band.size() - 1) - band.percent(0);
    return merged(found.spans, Math.min(LEAST_PERCENT, LEAST_SHARE * window));
  }

  private void part() {
    double from = band.percent(0);
    int last = band.size() - 1;
    for (int i = 0; i < last; i++) {
      double left = band.percent(i);
      double right = band.percent(i + 1);
      double low = zero(left, right, band.low(i), band.low(i + 1));
      double high = zero(left, right, band.high(i), band.high(i + 1));
      for (double cut : new double[] {Math.min(low, high), Math.max(low, high), right}) {
        if (cut - from > NOISE || (i == last - 1 && cut == right && cut > from)) {
          spans.add(new Span(order(i, (from + cut) / 2), from, cut));
          from = cut;
        }
      }
    }
  }

  /** Returns where a line between two points crosses zero; the left point if it does not. */
  private static double zero(double left, double right, double before, double after) {
    return before * after < 0 ? left + (right - left) * before / (before - after) : left;
  }

  private Order order(int i, double percent) {
    double share = (percent - band.percent(i)) / (band.percent(i + 1) - band.percent(i));
    if (band.low(i) + share * (band.low(i + 1) - band.low(i)) > NOISE) {
      return Order.AHEAD;
    }
    double high = band.high(i) + share * (band.high(i + 1) - band.high(i));
    return high < -NOISE ? Order.BEHIND : Order.UNDECIDED;
  }

  private static List<Span> merged(List<Span> spans, double least) {
    List<Span> wide = new ArrayList<>();
    for (Span span : joined(spans)) {
      Order order = span.width() < least ? Order.UNDECIDED : span.order();
      wide.add(new Span(order, span.from(), span.to()));
    }
    return joined(wide);
  }

  private static List<Span> joined(List<Span> spans) {
    List<Span> joined = new ArrayList<>();
    for (Span span : spans) {
      int last = joined.size() - 1;
      if (last >= 0 && joined.get(last).order() == span.order()) {
        joined.set(last, new Span(span.order(), joined.get(last).from(), span.to()));
      } else {
        joined.add(span);
      }
    }
    return joined;
  }
}
