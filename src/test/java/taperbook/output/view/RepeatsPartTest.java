package taperbook.output.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import taperbook.metric.ReportMetrics;
import taperbook.metric.ReportMetrics.Again;
import taperbook.metric.Sessions;
import taperbook.plan.ReportPlan.Season;
import taperbook.quantity.SocWindow;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.session.Channel;
import taperbook.session.Session;

/** The table of repeats: runs of 100, 102, and 98 kW, with peaks in closed form. */
final class RepeatsPartTest {
  private static Session run(String name, double kilowatts) {
    int rows = (int) (40 * 3600 / kilowatts / 30) + 1;
    double[] seconds = new double[rows];
    double[] soc = new double[rows];
    double[] power = new double[rows];
    for (int i = 0; i < rows; i++) {
      seconds[i] = 30.0 * i;
      soc[i] = Math.rint(5 + seconds[i] * kilowatts / 36 / 50);
      power[i] = kilowatts;
    }
    return Sessions.session()
        .named(name)
        .channel(Channel.SOC, 0.5, seconds, soc)
        .channel(Channel.POWER, 0.5, seconds, power)
        .build();
  }

  private static ReportResult measured(List<Session> repeats) {
    return ReportMetrics.measure(
        Sessions.plan(List.of(new SocWindow(10, 80)), List.of()),
        new ReportMetrics.Sessions(run("one", 100), List.of(), repeats, List.of(), Season.none()),
        List.of(),
        Again.NO);
  }

  private static RepeatsPart.Repeats part(ReportResult result) {
    return new RepeatsPart(new NumberViews(result)).view();
  }

  @Test
  void each_headline_number_has_a_row_with_every_run_mean_spread_and_next_run() {
    ReportResult result = measured(List.of(run("two", 102), run("three", 98)));
    RepeatsPart.Repeats part = part(result);
    assertThat(part.present()).isTrue();
    assertThat(part.runs()).hasSize(3).last().isEqualTo("three");
    List<ReportNumber> headline = result.main().numbers().headline();
    assertThat(part.table().rows().stream().map(r -> r.head().label()))
        .containsExactlyElementsOf(headline.stream().map(ReportNumber::label).toList());
    RepeatsPart.Row peak =
        part.table().rows().stream()
            .filter(r -> r.head().label().equals("Peak power"))
            .findFirst()
            .orElseThrow();
    assertThat(peak.head().unit()).isEqualTo("kW");
    assertThat(peak.each()).containsExactly("100", "102", "98");
    assertThat(peak.cells().get(0).shown().shown()).isEqualTo("100");
    assertThat(peak.cells().get(1).number().id()).isEqualTo("peak_power_run_spread");
    assertThat(peak.cells().get(2).number().measured()).isTrue();
  }

  @Test
  void without_repeats_there_is_no_table() {
    RepeatsPart.Repeats part = part(measured(List.of()));
    assertThat(part.present()).isFalse();
    assertThat(part.table().rows()).isEmpty();
  }
}
