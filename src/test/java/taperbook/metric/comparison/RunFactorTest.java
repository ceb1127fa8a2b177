package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import taperbook.metric.course.Courses;
import taperbook.metric.course.ReadByHand;
import taperbook.metric.course.TrueCurve;
import taperbook.result.PairResult;
import taperbook.result.Stretch;

/**
 * How often two runs of one car are distinguished by their curves, where the power of each run
 * differs by a factor: without allowing for it, with its spread stated, and with that of repeats.
 */
@Tag("slow")
final class RunFactorTest {
  private static final int PAIRS = 80;
  private static final int DRAWS = 120;
  private static final double TAU = 0.02;

  @Test
  void runs_of_one_car_are_rarely_distinguished_given_their_spread() throws IOException {
    List<Pair> pairs = IntStream.rangeClosed(1, PAIRS).parallel().mapToObj(Pair::of).toList();
    double single = apart(pairs, random -> 0);
    double stated = apart(pairs, random -> 1.959963984540054 * TAU);
    double two = apart(pairs, random -> ofRepeats(2, random));
    double three = apart(pairs, random -> ofRepeats(3, random));
    double five = apart(pairs, random -> ofRepeats(5, random));
    Files.createDirectories(Path.of("target"));
    Files.writeString(
        Path.of("target/run-factor.md"),
        String.format(
            Locale.ROOT,
            "pairs of runs with a lead, spread 2 %%: single %.1f %%, stated %.1f %%, 2 runs %.1f %%,"
                + " 3 runs %.1f %%, 5 runs %.1f %%%n",
            100 * single,
            100 * stated,
            100 * two,
            100 * three,
            100 * five));

    assertThat(single).isGreaterThan(0.2);
    // Expected is one in twenty; with 80 pairs up to eight are within chance (binomial, 97.5 %).
    assertThat(List.of(stated, two, three, five)).allMatch(share -> share <= 8.0 / PAIRS);
  }

  /** Half-width of the interval of a run's power, from a group of runs without reading errors. */
  private static double ofRepeats(int runs, Random random) {
    List<Double> powers = new ArrayList<>();
    for (int i = 0; i < runs; i++) {
      powers.add(Math.exp(TAU * random.nextGaussian()));
    }
    RunStatistics group = new RunStatistics(powers, Collections.nCopies(runs, 0.0), 0, 0);
    return group.halfBeyondReadings() / group.mean();
  }

  /** A spread that a pair allows for. */
  private interface Share {
    double of(Random random);
  }

  /** Two runs of one car, each read by hand. */
  private record Pair(Courses one, Courses other) {
    static Pair of(int seed) {
      Random random = new Random(seed * 0x9e3779b97f4a7c15L + 5);
      TrueCurve car = TrueCurve.random(random, 3 + 6.4 * random.nextDouble());
      return new Pair(run(car, random), run(car, random));
    }

    boolean isOrdered(double share) {
      PairResult pair = CurveComparison.of(one, other, "other", List.of(), share);
      return pair.stretches().stream().anyMatch(s -> s.order() != Stretch.Order.UNDECIDED);
    }
  }

  private static double apart(List<Pair> pairs, Share share) {
    Random random = new Random(18);
    List<Double> shares = pairs.stream().map(p -> share.of(random)).toList();
    return IntStream.range(0, pairs.size())
        .parallel()
        .mapToDouble(i -> pairs.get(i).isOrdered(shares.get(i)) ? 1 : 0)
        .average()
        .orElseThrow();
  }

  private static Courses run(TrueCurve car, Random random) {
    TrueCurve run = car.times(Math.exp(TAU * random.nextGaussian()));
    return new Courses(ReadByHand.session("run", run, random), Optional.empty(), DRAWS);
  }
}
