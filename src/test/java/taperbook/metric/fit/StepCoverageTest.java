package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Curves with steps of known position and height, read by hand: 15 to 40 rows, whole per cent and
 * whole kilowatts. The true values are in closed form. Observed with flat pieces: 596 of 615 steps
 * of 15 kW or more, 755 of 766 heights and 1146 of 1146 slopes; with some falling pieces: 594 of
 * 607, 766 of 768, 578 of 578, and 539 of 566 slopes of falls. No other step was detected.
 */
@Tag("slow")
final class StepCoverageTest {
  private static final int CURVES = 400;

  /** Flat or falling pieces at least 12 % wide, with steps of 8 to 40 kW between them. */
  private static final class Curve {
    final double from;
    final double to;
    final double[] places;
    final double[] heights;
    final double[] slopes;
    final TaperPoints points;

    Curve(Random random, boolean flat) {
      from = 5 + 5 * random.nextDouble();
      to = 80 + 5 * random.nextDouble();
      places = new double[1 + random.nextInt(3)];
      do {
        Arrays.setAll(places, j -> from + 12 + (to - from - 24) * random.nextDouble());
        Arrays.sort(places);
      } while (!IntStream.range(1, places.length).allMatch(j -> places[j] - places[j - 1] >= 12));
      slopes = new double[places.length + 1];
      heights = new double[places.length];
      double power = 160;
      double begin = from;
      for (int k = 0; k < slopes.length; k++) {
        slopes[k] = flat || random.nextBoolean() ? 0 : -0.3 - 1.2 * random.nextDouble();
        if (k < places.length) {
          heights[k] = -8 - 32 * random.nextDouble();
          power += slopes[k] * (places[k] - begin);
          heights[k] *= power + heights[k] < 25 ? -1 : 1;
          power += heights[k];
          begin = places[k];
        }
      }
      int rows = 15 + random.nextInt(26);
      double[] socs =
          IntStream.range(0, rows)
              .mapToDouble(
                  i -> from + (to - from) * (i + 0.8 * (random.nextDouble() - 0.5)) / (rows - 1))
              .sorted()
              .toArray();
      points =
          new TaperPoints(
              Arrays.stream(socs).map(Math::rint).toArray(),
              Arrays.stream(socs).map(q -> Math.rint(at(q))).toArray(),
              0.5,
              0.5);
    }

    double at(double soc) {
      double power = 160 + slopes[0] * (Math.min(soc, places[0]) - from);
      for (int j = 0; j < places.length && soc > places[j]; j++) {
        double end = j + 1 < places.length ? Math.min(soc, places[j + 1]) : soc;
        power += heights[j] + slopes[j + 1] * (end - places[j]);
      }
      return power;
    }
  }

  private static double share(int part, int of) {
    return (double) part / of;
  }

  @ParameterizedTest
  @CsvSource({"true", "false"})
  void steps_are_detected_in_their_gap_and_intervals_of_adjacent_slopes_contain_the_true_values(
      boolean flat) {
    int steps = 0;
    int found = 0;
    int high = 0;
    int highFound = 0;
    int heightsInside = 0;
    int surplus = 0;
    int flats = 0;
    int flatsInside = 0;
    int falls = 0;
    int fallsInside = 0;
    for (int seed = 1; seed <= CURVES; seed++) {
      Curve curve = new Curve(new Random(7919L * seed), flat);
      TaperFit fit = TaperFit.of(curve.points, curve.points.scale());
      int hits = 0;
      for (int j = 0; j < curve.places.length; j++) {
        double place = curve.places[j];
        double height = curve.heights[j];
        boolean hit = false;
        for (Step step : fit.steps()) {
          if (step.soc().bounds().contains(place)) {
            hit = true;
            heightsInside += step.height().bounds().contains(height) ? 1 : 0;
          }
        }
        steps++;
        hits += hit ? 1 : 0;
        high += Math.abs(height) >= 15 ? 1 : 0;
        highFound += hit && Math.abs(height) >= 15 ? 1 : 0;
      }
      found += hits;
      surplus += fit.steps().size() - hits;
      if (hits == curve.places.length && fit.segments().size() == hits + 1) {
        for (int k = 0; k <= hits; k++) {
          Segment segment = fit.segments().get(k);
          assertThat(segment.slopeSeen()).isTrue();
          int inside = segment.slope().bounds().contains(curve.slopes[k]) ? 1 : 0;
          boolean level = curve.slopes[k] == 0;
          flats += level ? 1 : 0;
          flatsInside += level ? inside : 0;
          falls += level ? 0 : 1;
          fallsInside += level ? 0 : inside;
        }
      }
    }
    assertThat(share(highFound, high)).as("of %d steps", high).isGreaterThanOrEqualTo(0.9);
    assertThat(share(heightsInside, found)).as("of %d heights", found).isGreaterThanOrEqualTo(0.93);
    assertThat(share(surplus, steps)).as("surplus").isLessThanOrEqualTo(0.02);
    assertThat(share(flatsInside, flats)).as("of %d plateaus", flats).isGreaterThanOrEqualTo(0.93);
    if (!flat) {
      assertThat(share(fallsInside, falls)).as("of %d falls", falls).isGreaterThanOrEqualTo(0.93);
    }
  }
}
