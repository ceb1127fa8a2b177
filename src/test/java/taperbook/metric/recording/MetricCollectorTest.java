package taperbook.metric.recording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import taperbook.i18n.Message;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Contribution;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.result.UncertaintySource;
import taperbook.session.RowRef;

/** A number keeps its outcome: an interval that is lost here is lost in every output. */
final class MetricCollectorTest {
  private static final Metric METRIC =
      Metric.charging("peak_power", "Peak power", Unit.KILOWATT, Method.HIGHEST_READING);
  private static final Estimate ESTIMATE = new Estimate(168, new Interval(166.5, 171));
  private static final List<RowRef> ROWS = List.of(new RowRef("r", 4), new RowRef("r", 7));

  private final MetricCollector collector = new MetricCollector("one", "other", List.of());

  private ReportNumber only() {
    assertThat(collector.numbers().all()).hasSize(1);
    return collector.numbers().all().get(0);
  }

  @Test
  void bounds_keep_both_ends() {
    collector.measured(METRIC, Finding.of(ESTIMATE, ROWS));
    assertThat(only().outcome()).isEqualTo(new Outcome.Measured(ESTIMATE, 1));
  }

  @Test
  void an_interval_keeps_its_ends_and_its_coverage() {
    collector.covered(METRIC, Finding.of(ESTIMATE, ROWS), 0.95);
    assertThat(only().outcome()).isEqualTo(new Outcome.Measured(ESTIMATE, 0.95));
    assertThat(only().estimate()).contains(ESTIMATE);
  }

  @Test
  void a_simulated_outcome_keeps_its_budget() {
    Outcome sampled =
        new Outcome.Measured(
            ESTIMATE, 0.95, List.of(new Contribution(UncertaintySource.CLOCK, 0.8, 1)));
    collector.add(METRIC, Finding.of(sampled, ROWS));
    assertThat(only().outcome()).isEqualTo(sampled);
    assertThat(only().origin().session()).isEqualTo("one");
    assertThat(only().origin().against()).isEqualTo("other");
    assertThat(only().origin().rows()).containsExactlyElementsOf(ROWS);
  }

  @Test
  void a_withheld_number_has_a_reason_and_no_rows() {
    collector.add(
        METRIC, Finding.of(new Outcome.Withheld(Message.verbatim("no power was recorded")), ROWS));
    assertThat(only().withheld()).contains("no power was recorded");
    assertThat(only().estimate()).isEmpty();
    assertThat(only().origin().rows()).isEmpty();
  }

  @Test
  void a_number_that_is_not_requested_is_omitted() {
    MetricCollector some = new MetricCollector("one", List.of(), m -> !m.id().equals("peak_power"));
    some.measured(METRIC, Finding.of(ESTIMATE, ROWS));
    assertThat(some.wants(METRIC)).isFalse();
    assertThat(some.numbers().all()).isEmpty();
  }
}
