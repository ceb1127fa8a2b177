package taperbook.measure.simulate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import taperbook.measure.Sessions;
import taperbook.measure.montecarlo.MonteCarlo;
import taperbook.model.Channel;
import taperbook.model.Estimate;
import taperbook.model.RangeItem;
import taperbook.model.RangeTest;
import taperbook.model.Session;

/** What one number comes to must not depend on which others a report asks for. */
final class SessionTrialTest {
  private static final Session SESSION =
      Sessions.session()
          .clockHalfStep(0.5)
          .channel(
              Channel.SOC, 0.5, new double[] {0, 300, 700, 1100}, new double[] {10, 40, 70, 80})
          .channel(
              Channel.POWER, 0.5, new double[] {0, 300, 700, 1100}, new double[] {90, 120, 60, 40})
          .build();

  private static final RangeTest DRIVE =
      Sessions.rangeTest(
          Map.of(
              RangeItem.AVERAGE_SPEED, Estimate.exactly(100),
              RangeItem.DISTANCE, Estimate.around(300, 2),
              RangeItem.START_SOC, Estimate.around(90, 0.5),
              RangeItem.END_SOC, Estimate.around(10, 0.5),
              RangeItem.ENERGY_USED, Estimate.exactly(50)));

  private static final Outputs.Output TIME =
      new Outputs.Output("time", d -> d.soc().timeOf(100 * 60 / d.drive().fullRange() + 20));
  private static final Outputs.Output POWER = new Outputs.Output("power", d -> d.power().at(150));

  /** Its distribution has no standard deviation, so that it stays to the last block. */
  private static final Outputs.Output STAYING =
      new Outputs.Output("staying", d -> 1 / (d.soc().timeOf(50) - 433.3));

  private static List<MonteCarlo.Result> results(Outputs.Output... outputs) {
    SessionTrial trial =
        new SessionTrial(new DrawnSession(SESSION, Optional.of(DRIVE)), List.of(outputs));
    return new MonteCarlo(1000, 1, 0.95, 9).run(trial, outputs.length);
  }

  @Test
  void other_numbers_move_nothing() {
    MonteCarlo.Result alone = results(TIME).get(0);
    assertThat(results(TIME, POWER).get(0)).isEqualTo(alone);
    List<MonteCarlo.Result> three = results(STAYING, POWER, TIME);
    assertThat(three.get(0).trials()).isEqualTo(9000);
    assertThat(three.get(2)).isEqualTo(alone);
    assertThat(three.get(1)).isEqualTo(results(POWER).get(0));
    assertThat(three.get(0)).isEqualTo(results(STAYING).get(0));
  }
}
