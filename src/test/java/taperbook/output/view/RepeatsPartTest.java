package taperbook.output.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import taperbook.format.NumberFormatter;
import taperbook.metric.ReportMetrics;
import taperbook.metric.ReportMetrics.Again;
import taperbook.metric.Sessions;
import taperbook.plan.ReportPlan.Season;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
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

  private static Map<String, Object> part(ReportResult result) {
    NumberFormatter formatter = new NumberFormatter(Unit.MILE);
    NumberViews views = new NumberViews(result, formatter, new CaveatMarks(result));
    return new RepeatsPart(result, views, formatter).map();
  }

  @SuppressWarnings("unchecked")
  private static List<Map<String, Object>> rows(Map<String, Object> part) {
    Map<String, Object> table = (Map<String, Object>) Objects.requireNonNull(part.get("table"));
    return (List<Map<String, Object>>) Objects.requireNonNull(table.get("rows"));
  }

  private static Map<?, ?> cell(Map<String, Object> row, int column) {
    return (Map<?, ?>) ((List<?>) Objects.requireNonNull(row.get("cells"))).get(column);
  }

  @Test
  void each_headline_number_has_a_row_with_every_run_mean_spread_and_next_run() {
    ReportResult result = measured(List.of(run("two", 102), run("three", 98)));
    Map<String, Object> part = part(result);
    assertThat(part.get("present")).isEqualTo(true);
    assertThat((List<?>) part.get("runs")).hasSize(3).last().isEqualTo("three");
    List<ReportNumber> headline = result.main().numbers().headline();
    assertThat(rows(part).stream().map(r -> r.get("label")))
        .containsExactlyElementsOf(headline.stream().map(ReportNumber::label).toList());
    Map<String, Object> peak =
        rows(part).stream()
            .filter(r -> "Peak power".equals(r.get("label")))
            .findFirst()
            .orElseThrow();
    assertThat(peak.get("unit")).isEqualTo("kW");
    assertThat(peak.get("each")).isEqualTo(List.of("100", "102", "98"));
    assertThat(cell(peak, 0).get("shown")).isEqualTo("100");
    assertThat(cell(peak, 1).get("id")).isEqualTo("peak_power_run_spread");
    assertThat(cell(peak, 2).get("measured")).isEqualTo(true);
  }

  @Test
  void without_repeats_there_is_no_table() {
    Map<String, Object> part = part(measured(List.of()));
    assertThat(part.get("present")).isEqualTo(false);
    assertThat(rows(part)).isEmpty();
  }
}
