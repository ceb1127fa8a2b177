package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Stretch;
import taperbook.result.Stretch.Order;

final class PairMetricNamesTest {
  private static final Stretch.Ids IDS = new Stretch.Ids("a", "b", "c", "d");

  private final PairMetricNames names = new PairMetricNames("the red one");

  @Test
  void the_numbers_of_the_window_name_the_other_session() {
    List<Metric> window = names.ofWindow();
    assertThat(window)
        .containsExactly(names.sharedFrom(), names.sharedTo(), names.meanLead(), names.timeGain());
    assertThat(window)
        .extracting(Metric::id)
        .containsExactly(
            "shared_soc_from", "shared_soc_to", "mean_lead_shared", "time_gain_shared");
    assertThat(window)
        .extracting(Metric::unit)
        .containsExactly(Unit.PERCENT, Unit.PERCENT, Unit.KILOWATT, Unit.SECOND);
    assertThat(window)
        .extracting(Metric::method)
        .containsExactly(
            Method.SHARED_WINDOW, Method.SHARED_WINDOW, Method.POWER_LEAD, Method.TIME_GAIN);
    assertThat(window).allMatch(m -> m.label().contains("the red one"));
    assertThat(window).extracting(Metric::label).doesNotHaveDuplicates();
  }

  @Test
  void the_numbers_of_a_stretch_state_who_is_ahead() {
    List<Metric> ahead = names.lead(IDS, 2, Order.AHEAD);
    List<Metric> behind = names.lead(IDS, 2, Order.BEHIND);
    assertThat(ahead).extracting(Metric::id).containsExactly("a", "b", "c", "d");
    assertThat(ahead)
        .extracting(Metric::unit)
        .containsExactly(Unit.PERCENT, Unit.PERCENT, Unit.KILOWATT, Unit.SECOND);
    assertThat(ahead)
        .allMatch(m -> m.label().startsWith("Stretch 2, this session ahead of the red one:"));
    assertThat(behind)
        .allMatch(m -> m.label().startsWith("Stretch 2, this session behind the red one:"));
    assertThat(ahead).extracting(Metric::label).doesNotHaveDuplicates();
  }

  @Test
  void a_crossing_has_its_number() {
    Metric crossing = names.crossing(3);
    assertThat(crossing.id()).isEqualTo("crossing_3_soc");
    assertThat(crossing.unit()).isEqualTo(Unit.PERCENT);
    assertThat(crossing.method()).isEqualTo(Method.CURVE_CROSSING);
    assertThat(crossing.label())
        .isEqualTo("Crossing 3 of this session's curve with that of the red one");
  }
}
