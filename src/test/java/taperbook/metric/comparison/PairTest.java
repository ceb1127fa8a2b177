package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.quantity.Interval;
import taperbook.session.RowRef;

/** The states of charge at which a pair is compared, and what it takes from both sides. */
final class PairTest {
  /** A side of constant power with the given states of charge, 30 s apart. */
  private static Side side(String name, double... soc) {
    double[] seconds = IntStream.range(0, soc.length).mapToDouble(i -> 30 * i).toArray();
    double[] power = new double[soc.length];
    Arrays.fill(power, 100);
    return Pairs.side(name, 0.5, seconds, soc, power);
  }

  private static List<Double> grid(Pair pair) {
    return IntStream.range(0, pair.band().size()).mapToObj(pair.band()::percent).toList();
  }

  @Test
  void it_compares_at_quarters_of_a_per_cent_and_at_the_corners_of_both() {
    Pair pair =
        new Pair(
            side("one", 10, 11.1, 12), side("other", 9, 11.3, 12, 13), new Interval(10.2, 11.9), 0);
    assertThat(grid(pair))
        .containsExactly(10.2, 10.25, 10.5, 10.75, 11.0, 11.1, 11.25, 11.3, 11.5, 11.75, 11.9);
  }

  @Test
  void ends_and_corners_that_are_quarters_appear_once() {
    Pair pair = new Pair(side("one", 10, 11, 12), side("other", 10, 12), new Interval(10, 12), 0);
    assertThat(grid(pair))
        .containsExactly(10.0, 10.25, 10.5, 10.75, 11.0, 11.25, 11.5, 11.75, 12.0);
  }

  @Test
  void the_corners_of_a_log_are_left_out() {
    double[] fine = IntStream.rangeClosed(0, 200).mapToDouble(i -> 10 + 0.03 * i).toArray();
    Interval window = new Interval(10, 12);
    assertThat(fine).hasSize(201);
    assertThat(grid(new Pair(side("one", fine), side("other", 10, 16), window, 0))).hasSize(9);
    // 200 corners, of which 66 are between 10 % and 12 %, six of them quarters as well.
    double[] fewer = Arrays.copyOf(fine, 200);
    List<Double> expected = new ArrayList<>();
    for (int i = 0; i <= 8; i++) {
      expected.add(10 + i / 4.0);
    }
    for (double corner : fewer) {
      if (corner < 12 && expected.stream().noneMatch(e -> Math.abs(e - corner) < 1e-6)) {
        expected.add(corner);
      }
    }
    expected.sort(null);
    assertThat(grid(new Pair(side("one", fewer), side("other", 10, 16), window, 0)))
        .hasSize(expected.size());
  }

  @Test
  void rows_and_gaps_are_those_of_both_sides() {
    Side one = side("one", 10, 20, 30, 40);
    Side other = side("other", 10, 25, 40);
    Pair pair = new Pair(one, other, new Interval(10, 40), 0);
    List<RowRef> expected = new ArrayList<>(one.rows(15, 22));
    expected.addAll(other.rows(15, 22));
    assertThat(pair.rows(15, 22)).isEqualTo(expected).hasSize(10);
    assertThat(pair.isInWideGap(15)).isFalse();
    Side gap = gapAbove(20);
    assertThat(new Pair(gap, other, new Interval(10, 40), 0).isInWideGap(30)).isTrue();
    assertThat(new Pair(other, gap, new Interval(10, 40), 0).isInWideGap(30)).isTrue();
    assertThat(new Pair(other, gap, new Interval(10, 40), 0).isInWideGap(15)).isFalse();
  }

  /** A side with a gap of five minutes from a charge on. */
  private static Side gapAbove(double percent) {
    double[] seconds = {0, 30, 330, 360};
    double[] soc = {10, percent, 38, 40};
    double[] power = {100, 100, 100, 100};
    return Pairs.side("gap", 0.5, seconds, soc, power);
  }

  @Test
  void its_numbers_are_those_of_its_draws() {
    Pair pair = Pairs.pair(3, 4);
    Pair swapped = Pairs.pair(4, 3);
    // The mean over the window, and so over its halves.
    double whole = pair.meanLead(20, 70).value();
    double halves = (pair.meanLead(20, 45).value() + pair.meanLead(45, 70).value()) / 2;
    assertThat(whole).isCloseTo(halves, within(1e-9));
    assertThat(Math.abs(whole)).isGreaterThan(1);
    assertThat(swapped.meanLead(20, 70).value()).isCloseTo(-whole, within(1e-9));
    double gain = pair.timeGain(20, 70).value();
    assertThat(Math.abs(gain)).isGreaterThan(1);
    assertThat(swapped.timeGain(20, 70).value()).isCloseTo(-gain, within(1e-9));
    assertThat(pair.meanRatio(20, 70).value() > 100).isEqualTo(whole > 0);
    assertThat(pair.meanRatio(20, 70).value() * swapped.meanRatio(20, 70).value())
        .isCloseTo(1e4, within(20.0));
  }
}
