package taperbook.metric.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.metric.ReportMetrics;
import taperbook.metric.Sessions;
import taperbook.plan.Basis;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.result.Numbers;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.DisplayRounding;
import taperbook.session.DriveEnds;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.Session;

/**
 * How often the stated interval contains the true value of a drive: drives that start full or at 90
 * % and more, end at 1 to 8 %, and are read from displays of each rounding.
 */
@Tag("slow")
final class DriveCoverageTest {
  private static final int DRIVES = 800;
  private static final ReportPlan PLAN =
      Sessions.plan(List.of(new SocWindow(10, 80)), List.of(), Unit.KILOMETRE, Basis.DRIVEN);

  private static double shown(double truth, DisplayRounding way) {
    return switch (way) {
      case DOWN -> Math.floor(truth);
      case UP -> Math.ceil(truth);
      default -> Math.floor(truth + 0.5);
    };
  }

  private static Estimate rounded(double truth, double step) {
    return Estimate.around(Math.rint(truth / step) * step, step / 2);
  }

  private static Numbers refined(RangeTest test, DisplayRounding declared) {
    Session session =
        Sessions.session()
            .text(ConditionItem.DISPLAY_ROUNDS, declared.words())
            // No readings of the charge, because numbers of the drive do not depend on a session.
            .channel(
                Channel.BATTERY_TEMPERATURE, 0.5, new double[] {0, 1800}, new double[] {20, 40})
            .build();
    return ReportMetrics.measureSession(PLAN, session, List.of(test));
  }

  @ParameterizedTest
  @CsvSource({
    "NEAREST, NEAREST", "DOWN, DOWN", "UP, UP",
    "NEAREST, NOT_KNOWN", "DOWN, NOT_KNOWN", "UP, NOT_KNOWN"
  })
  void the_interval_contains_the_true_value_of_a_drive_about_as_often_as_stated(
      DisplayRounding way, DisplayRounding declared) {
    Random random = new Random(20260417);
    int range = 0;
    int consumption = 0;
    double bias = 0;
    for (int i = 0; i < DRIVES; i++) {
      double from = random.nextBoolean() ? 100 : 90 + 9.9 * random.nextDouble();
      double to = 1 + 7 * random.nextDouble();
      double full = 250 + 250 * random.nextDouble();
      double perKilometre = 130 + 100 * random.nextDouble();
      double distance = full * (from - to) / 100;
      Map<RangeItem, Estimate> amounts = new HashMap<>();
      amounts.put(RangeItem.DISTANCE, rounded(distance, 0.1));
      amounts.put(RangeItem.START_SOC, Estimate.around(shown(from, way), 0.5));
      amounts.put(RangeItem.END_SOC, Estimate.around(shown(to, way), 0.5));
      amounts.put(RangeItem.ENERGY_USED, rounded(distance * perKilometre / 1000, 0.1));
      Numbers numbers = refined(Sessions.rangeTest(amounts), declared);
      Estimate computed = numbers.estimate("driven_range_full").orElseThrow();
      range += computed.bounds().contains(full) ? 1 : 0;
      bias +=
          (computed.value() - computed.bounds().middle())
              / (computed.bounds().width() / 2)
              / DRIVES;
      consumption +=
          numbers.estimate("consumption").orElseThrow().bounds().contains(perKilometre) ? 1 : 0;
    }
    String seen = way + " declared " + declared + ": " + range + ", " + consumption + ", " + bias;
    assertThat(range).as(seen).isBetween((int) (0.93 * DRIVES), (int) (0.985 * DRIVES));
    assertThat(consumption).as(seen).isBetween((int) (0.93 * DRIVES), (int) (0.985 * DRIVES));
    // The printed value is at the centre of its interval.
    assertThat(bias).as(seen).isCloseTo(0, within(0.2));
  }

  /**
   * Means and bounds by hand. A start displayed as 100 % is 100 in half of the cases, and otherwise
   * on average 99.75 if rounded to nearest, 100 if rounded down, 99.5 if rounded up; an end
   * displayed as 3 % is on average 3, 3.5, and 2.5. Undeclared: the mean of 96.875, 96.5 and, as
   * full, 97.5.
   */
  @ParameterizedTest
  @CsvSource({
    "100, 3, NEAREST, 96.875, 96, 97.5",
    "100, 3, DOWN, 96.5, 96, 97",
    "100, 3, UP, 97.25, 96, 98",
    "100, 3, NOT_KNOWN, 96.9583333333, 96, 98",
    // Below 100 % both ends have the same rounding, which cancels.
    "92, 11, NEAREST, 81, 80, 82",
    "92, 11, DOWN, 81, 80, 82",
    "92, 11, UP, 81, 80, 82",
    "92, 11, NOT_KNOWN, 81, 80, 82",
    // No charge is below empty.
    "92, 0, NEAREST, 91.75, 91, 92.5",
    "92, 0, DOWN, 92, 91, 93",
    "92, 0, UP, 91.5, 91, 92",
  })
  void charge_used_is_the_mean_over_the_charges_that_the_display_allows(
      double start, double end, DisplayRounding way, double mean, double low, double high) {
    Estimate used =
        new DriveEnds(Estimate.around(start, 0.5), Estimate.around(end, 0.5), way).used();
    assertThat(used.value()).isCloseTo(mean, within(1e-9));
    assertThat(used.bounds()).isEqualTo(new Interval(low, high));
  }
}
