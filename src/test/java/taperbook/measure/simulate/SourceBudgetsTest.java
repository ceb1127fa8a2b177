package taperbook.measure.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import taperbook.measure.Sessions;
import taperbook.model.Channel;
import taperbook.model.Contribution;
import taperbook.model.Estimate;
import taperbook.model.RangeItem;
import taperbook.model.RangeTest;
import taperbook.model.Session;
import taperbook.model.UncertaintySource;

/** How large the contributions to an uncertainty are, and how much work they are to find. */
final class SourceBudgetsTest {
  /** Trials for each source: counted, so that a change of it is made on purpose. */
  private static final int TRIALS = 2000;

  private static final int SOURCES = UncertaintySource.values().length;

  private static final Session SESSION =
      Sessions.session()
          .clockHalfStep(0.5)
          .channel(Channel.SOC, 0.5, new double[] {0, 300, 700}, new double[] {10, 40, 70})
          .build();

  private static final RangeTest DRIVE =
      Sessions.rangeTest(
          Map.of(
              RangeItem.AVERAGE_SPEED, Estimate.exactly(100),
              RangeItem.DISTANCE, Estimate.around(300, 2),
              RangeItem.START_SOC, Estimate.exactly(90),
              RangeItem.END_SOC, Estimate.exactly(10),
              RangeItem.ENERGY_USED, Estimate.exactly(50)));

  private static List<Contribution> budget(ToDoubleFunction<DrawnSession> output) {
    List<Outputs.Output> outputs = List.of(new Outputs.Output("output", output));
    return new SourceBudgets(SESSION, Optional.of(DRIVE), outputs).all().get(0);
  }

  /**
   * GUM (JCGM 100:2008), 4.3.7: a rectangular half width a has a standard uncertainty a / sqrt 3.
   */
  @Test
  void rounding_contributes_its_half_width_over_the_root_of_three() {
    List<Contribution> ofEnd = budget(DrawnSession::endSecond);
    assertThat(ofEnd).singleElement().satisfies(c -> near(c, UncertaintySource.CLOCK, 0.5));
    List<Contribution> ofRange = budget(d -> d.drive().fullRange() * 0.8);
    assertThat(ofRange)
        .singleElement()
        .satisfies(c -> near(c, UncertaintySource.RANGE_DISTANCE, 2));
  }

  private static void near(Contribution told, UncertaintySource source, double halfWidth) {
    assertThat(told.source()).isEqualTo(source);
    assertThat(told.share()).isEqualTo(1);
    // 2000 trials know a standard uncertainty to 1 / sqrt(4000) of it: four times that.
    double u = halfWidth / Math.sqrt(3);
    assertThat(told.standardUncertainty()).isCloseTo(u, within(u * 4 / Math.sqrt(2 * TRIALS)));
  }

  @Test
  void an_output_is_worked_out_again_only_for_sources_that_move_what_it_asks_for() {
    AtomicInteger asked = new AtomicInteger();
    budget(d -> d.drive().consumption() + 0 * asked.incrementAndGet());
    int moving = EnumSet.range(UncertaintySource.RANGE_DISTANCE, UncertaintySource.SPEED).size();
    assertThat(asked.get()).isEqualTo(moving * TRIALS + (SOURCES - moving));
    asked.set(0);
    budget(d -> d.endSecond() + 0 * asked.incrementAndGet());
    assertThat(asked.get()).isEqualTo(TRIALS + SOURCES - 1);
  }
}
