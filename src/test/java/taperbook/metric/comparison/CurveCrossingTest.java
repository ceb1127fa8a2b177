package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.metric.comparison.LeadStretches.Span;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.result.Stretch.Order;

/** Crossings by the zeros of the difference between the points of the band. */
final class CurveCrossingTest {
  private static final double FROM = 20;
  private static final double TO = 70;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34, 55, 89})
  void a_crossing_is_the_middle_one_of_the_zeros_of_the_difference(long seed) {
    Band band = Pairs.pair(seed, seed + 100).band();
    List<Double> zeros = zeros(band);
    for (int i = 0; i < zeros.size(); i++) {
      // From the middle between the neighbouring zeros, and then to the end of the window.
      double before = i == 0 ? FROM : (zeros.get(i - 1) + zeros.get(i)) / 2;
      double after = i + 1 == zeros.size() ? TO : (zeros.get(i) + zeros.get(i + 1)) / 2;
      assertThat(crossing(band, before, after).value()).isCloseTo(zeros.get(i), within(1e-9));
      List<Double> rest = zeros.subList(i, zeros.size());
      Estimate crossing = crossing(band, before, TO);
      assertThat(crossing.value()).isCloseTo(rest.get(rest.size() / 2), within(1e-9));
      assertThat(crossing.bounds()).isEqualTo(new Interval(before, TO));
    }
  }

  @Test
  void the_pairs_of_these_tests_cross() {
    assertThat(List.of(1L, 2L, 3L, 5L, 8L, 13L, 21L, 34L, 55L, 89L))
        .anyMatch(seed -> zeros(Pairs.pair(seed, seed + 100).band()).size() > 1);
  }

  /** Returns where the line between the points of a band passes zero. */
  private static List<Double> zeros(Band band) {
    List<Double> zeros = new ArrayList<>();
    for (int i = 0; i + 1 < band.size(); i++) {
      double left = band.value(i);
      double right = band.value(i + 1);
      if (left < 0 != right < 0) {
        double rise = right - left;
        zeros.add(band.percent(i) - left * (band.percent(i + 1) - band.percent(i)) / rise);
      }
    }
    return zeros;
  }

  private static Estimate crossing(Band band, double from, double to) {
    List<Estimate> crossings =
        CurveCrossing.all(
            band, List.of(new Span(Order.BEHIND, FROM, from), new Span(Order.AHEAD, to, TO)));
    assertThat(crossings).hasSize(1);
    return crossings.get(0);
  }

  @Test
  void leads_that_meet_cross_where_they_meet() {
    Band band = Pairs.pair(3, 4).band();
    assertThat(crossing(band, 40.125, 40.125)).isEqualTo(Estimate.exactly(40.125));
  }

  @Test
  void a_difference_of_zero_throughout_crosses_in_the_middle() {
    Band band = Pairs.pair(3, 3).band();
    assertThat(crossing(band, 40, 50).value()).isEqualTo(45);
    assertThat(crossing(band, 40, 60).value()).isEqualTo(50);
  }

  @Test
  void only_opposite_leads_cross() {
    Band band = Pairs.pair(3, 4).band();
    Span first = new Span(Order.AHEAD, 20, 30);
    Span undecided = new Span(Order.UNDECIDED, 30, 40);
    Span again = new Span(Order.AHEAD, 40, 50);
    Span behind = new Span(Order.BEHIND, 50, 60);
    Span last = new Span(Order.AHEAD, 65, 70);
    assertThat(CurveCrossing.all(band, List.of(first))).isEmpty();
    assertThat(CurveCrossing.all(band, List.of(first, undecided, again))).isEmpty();
    assertThat(CurveCrossing.all(band, List.of(first, undecided, again, behind, last)))
        .extracting(Estimate::bounds)
        .containsExactly(new Interval(50, 50), new Interval(60, 65));
  }
}
