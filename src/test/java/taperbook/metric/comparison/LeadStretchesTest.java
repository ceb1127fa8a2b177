package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.metric.comparison.LeadStretches.Span;
import taperbook.quantity.Interval;
import taperbook.result.Stretch.Order;

/** Properties of stretches, by the edges of the band between its points. */
final class LeadStretchesTest {
  /** Points that are neither those of the band nor the middles between them, %. */
  private static final double FINE = 0.0373;

  @ParameterizedTest
  @CsvSource({"1, 2", "2, 1", "3, 4", "4, 3", "5, 6", "6, 5", "7, 8", "9, 10", "11, 12", "13, 14"})
  void stretches_are_led_where_the_whole_band_is_on_one_side_of_zero(long one, long other) {
    Band band = Pairs.pair(one, other).band();
    List<Span> spans = LeadStretches.of(band);
    double from = band.percent(0);
    Order before = null;
    for (Span span : spans) {
      assertThat(span.from()).isEqualTo(from);
      assertThat(span.order()).isNotEqualTo(before);
      if (span.isLed()) {
        checkLed(band, span);
      } else {
        assertThat(widestLead(band, span)).isLessThan(1);
      }
      from = span.to();
      before = span.order();
    }
    assertThat(from).isEqualTo(band.percent(band.size() - 1));
  }

  private static void checkLed(Band band, Span span) {
    assertThat(span.to() - span.from()).isGreaterThanOrEqualTo(1);
    assertThat(span.width()).isEqualTo(span.to() - span.from());
    for (double x = span.from() + 1e-6; x < span.to() - 1e-6; x += FINE) {
      assertThat(orderAt(band, x)).as("%s at %s", span, x).isEqualTo(span.order());
    }
    for (double edge : new double[] {span.from(), span.to()}) {
      boolean isEnd = edge == band.percent(0) || edge == band.percent(band.size() - 1);
      if (!isEnd) {
        assertThat(Math.min(Math.abs(low(band, edge)), Math.abs(high(band, edge))))
            .as("%s", span)
            .isCloseTo(0, within(1e-9));
      }
    }
  }

  /** Returns the greatest width over which one session leads throughout, %. */
  private static double widestLead(Band band, Span span) {
    double widest = 0;
    double since = span.from();
    Order before = Order.UNDECIDED;
    for (double x = span.from() + 1e-6; x < span.to() - 1e-6; x += FINE) {
      Order order = orderAt(band, x);
      since = order == before ? since : x;
      before = order;
      widest = order == Order.UNDECIDED ? widest : Math.max(widest, x - since);
    }
    return widest;
  }

  private static Order orderAt(Band band, double percent) {
    return low(band, percent) > 0
        ? Order.AHEAD
        : high(band, percent) < 0 ? Order.BEHIND : Order.UNDECIDED;
  }

  private static double low(Band band, double percent) {
    return Pairs.between(band, percent, band::low);
  }

  private static double high(Band band, double percent) {
    return Pairs.between(band, percent, band::high);
  }

  @Test
  void the_first_is_ahead_where_the_other_is_behind() {
    List<Span> spans = LeadStretches.of(Pairs.pair(3, 4).band());
    List<Span> swapped = LeadStretches.of(Pairs.pair(4, 3).band());
    assertThat(spans.stream().filter(Span::isLed)).isNotEmpty();
    assertThat(swapped).hasSameSizeAs(spans);
    for (int i = 0; i < spans.size(); i++) {
      assertThat(swapped.get(i).order() == Order.AHEAD)
          .isEqualTo(spans.get(i).order() == Order.BEHIND);
      assertThat(swapped.get(i).to()).isCloseTo(spans.get(i).to(), within(1e-9));
    }
  }

  @Test
  void a_fifth_of_a_narrow_window_is_enough_for_a_lead() {
    // In 2 % of state of charge a lead over 0.4 % counts, in a wider window it must be 1 %.
    double narrowest = Double.POSITIVE_INFINITY;
    for (double from = 20; from < 68; from += 0.5) {
      Interval window = new Interval(from, from + 2);
      Band band = new Pair(ONE, OTHER, window, 0).band();
      for (Span span : LeadStretches.of(band)) {
        if (span.isLed()) {
          assertThat(span.width()).isGreaterThanOrEqualTo(0.4);
          narrowest = Math.min(narrowest, span.width());
        }
      }
    }
    assertThat(narrowest).isLessThan(1);
  }

  private static final Side ONE = Pairs.side("one", 3);
  private static final Side OTHER = Pairs.side("other", 4);
}
