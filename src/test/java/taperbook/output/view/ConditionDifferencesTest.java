package taperbook.output.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import taperbook.metric.ReportMetrics;
import taperbook.metric.Sessions;
import taperbook.plan.Basis;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.ReportResult;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.HowKnown;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.Session;

/** What a page marks as the best of a row, for cars with a clear difference: 100 kW and 60 kW. */
final class ConditionDifferencesTest {
  private static final ReportPlan PLAN =
      Sessions.plan(
          List.of(new SocWindow(10, 80)),
          List.of(new WantedDistance(100, Unit.KILOMETRE)),
          Unit.KILOMETRE,
          Basis.DRIVEN);

  private static Session session(String vehicle, double kilowatts, double batteryDegrees) {
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
        .named(vehicle.toLowerCase(Locale.ROOT))
        .text(ConditionItem.VEHICLE, vehicle)
        .amount(ConditionItem.BATTERY_TEMPERATURE_AT_START, batteryDegrees, 0.5)
        .channel(Channel.SOC, 0.5, seconds, soc)
        .channel(Channel.POWER, 0.5, seconds, power)
        .build();
  }

  private static RangeTest drive(String vehicle, double speed) {
    Map<RangeItem, Estimate> facts = new EnumMap<>(RangeItem.class);
    facts.put(RangeItem.DISTANCE, Estimate.around(300, 0.5));
    facts.put(RangeItem.START_SOC, Estimate.around(95, 0.5));
    facts.put(RangeItem.END_SOC, Estimate.around(15, 0.5));
    facts.put(RangeItem.AVERAGE_SPEED, Estimate.around(speed, 0.5));
    return Sessions.rangeTest(vehicle + "-drive", vehicle, facts, HowKnown.DISPLAYED);
  }

  private static ReportResult measured(double otherDegrees, List<RangeTest> drives) {
    return ReportMetrics.measure(
        PLAN, session("Finch", 100, 25), List.of(session("Carrier", 60, otherDegrees)), drives);
  }

  /** Labels of rows with a marked cell. */
  private static List<String> marked(ComparisonPart.Comparison comparison) {
    return Stream.of(comparison.common(), comparison.recorded())
        .flatMap(table -> table.rows().stream())
        .filter(row -> row.best() != -1)
        .map(row -> row.row().head().label())
        .toList();
  }

  private static ComparisonPart.Comparison comparison(ReportResult result) {
    return new ComparisonPart(new NumberViews(result)).view();
  }

  @Test
  void equal_caveats_are_merged_with_the_letter_of_each_session() {
    ReportResult result = measured(8, List.of());
    List<CaveatMarks.Item> items =
        new CaveatMarks(result)
            .byTopic().stream()
                .filter(t -> t.topic().equals("Battery and start"))
                .flatMap(t -> t.items().stream())
                .toList();
    assertThat(items)
        .extracting(i -> i.sentence().replace('\u00a0', ' '))
        .anySatisfy(
            s -> assertThat(s).startsWith("B: The battery was at 8 \u00b0C").doesNotContain("A: "))
        .filteredOn(s -> s.contains("The session began at 5 %."))
        .hasSize(1);
    assertThat(items).extracting(CaveatMarks.Item::mark).doesNotHaveDuplicates();
  }

  @Test
  void comparable_sessions_without_drives_have_their_best_marked() {
    ComparisonPart.Comparison comparison = comparison(measured(25, List.of()));
    assertThat(marked(comparison)).contains("Time from 10 % to 80 %");
    assertThat(comparison.unmarked()).isEmpty();
  }

  @Test
  void nothing_is_marked_in_different_conditions_and_the_conditions_are_named() {
    ComparisonPart.Comparison comparison = comparison(measured(8, List.of()));
    assertThat(marked(comparison)).isEmpty();
    assertThat(comparison.unmarked())
        .isEqualTo(
            List.of(
                "The sessions are not alike in battery temperature at start (A 25.0, B 8.0), so"
                    + " that no difference is put down to the cars."));
  }

  @Test
  void numbers_that_use_different_drives_are_not_marked_and_the_differences_are_named() {
    ReportResult result = measured(25, List.of(drive("Finch", 110), drive("Carrier", 95)));
    ComparisonPart.Comparison comparison = comparison(result);
    assertThat(marked(comparison))
        .contains("Time from 10 % to 80 %")
        .noneMatch(label -> label.contains("km"));
    assertThat(comparison.unmarked())
        .isEqualTo(
            List.of(
                "Each car was driven in a test of its own, and the tests differ in average speed"
                    + " (A 110.0, B 95.0): differences of numbers that rest on a drive are of these"
                    + " drives."));
    ConditionDifferences unmarked = new ConditionDifferences(result);
    assertThat(unmarked.mayMark(List.of(result.find("time_to_add_100_km", "finch")))).isFalse();
    assertThat(unmarked.mayMark(List.of(result.find("time_soc_10_80", "finch")))).isTrue();
    assertThat(unmarked.mayMark(List.of(Optional.empty()))).isTrue();
  }
}
