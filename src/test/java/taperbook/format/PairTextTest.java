package taperbook.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import taperbook.i18n.Message;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Numbers;
import taperbook.result.Outcome;
import taperbook.result.PairResult;
import taperbook.result.ReportNumber;
import taperbook.result.Stretch;
import taperbook.result.Stretch.Order;
import taperbook.session.Origin;

final class PairTextTest {
  private final List<ReportNumber> numbers = new ArrayList<>();

  @Test
  void lists_the_total_the_leads_and_the_crossing_by_charge() {
    measured("mean_lead_shared", Unit.KILOWATT, 13.2, 12.2, 14.2);
    measured("time_gain_shared", Unit.SECOND, 240, 200, 280);
    measured("lead_1_power", Unit.KILOWATT, 45, 44, 46);
    measured("lead_1_time_gain", Unit.SECOND, 192, 180, 204);
    measured("lead_2_power", Unit.KILOWATT, -12, -13, -11);
    measured("lead_2_time_gain", Unit.SECOND, -40, -50, -30);
    measured("crossing_1_soc", Unit.PERCENT, 44.2, 43, 45.5);
    assertThat(
            sentences(
                List.of("crossing_1_soc"),
                led(Order.AHEAD, 14, 43, 1),
                open(43, 45.5),
                led(Order.BEHIND, 45.5, 70, 2),
                open(70, 80)))
        .containsExactly(
            "Over the 14 % to 80 % that both went through, A took 13.2 kW (give or take 1.0 kW)"
                + " more than B on average over state of charge.",
            "From 14 % to 43 % A took more power than B, by 45 kW (give or take 1.0 kW) on"
                + " average, and was quicker there by 3 min 12 s (give or take 12 s).",
            "Between 43 % and 45.5 % the curves cross, by the readings at 44.2 %.",
            "From 45.5 % to 70 % B took more power than A, by 12 kW (give or take 1.0 kW) on"
                + " average, and was quicker there by 40 s (give or take 10 s).",
            "Elsewhere the readings cannot distinguish the two.");
  }

  @Test
  void names_no_winner_if_the_difference_is_undecided() {
    measured("mean_lead_shared", Unit.KILOWATT, 0.4, -1, 2);
    measured("time_gain_shared", Unit.SECOND, 5, -20, 30);
    assertThat(sentences(List.of(), open(14, 80)))
        .containsExactly(
            "Over the 14 % to 80 % that both went through, the readings cannot tell which of the"
                + " two took more power on average.",
            "Nowhere in between do the readings distinguish the power of A from that of B.");
  }

  @Test
  void a_larger_battery_may_accept_more_power_and_still_be_slower() {
    measured("mean_lead_shared", Unit.KILOWATT, 20, 19, 21);
    measured("time_gain_shared", Unit.SECOND, -100, -110, -90);
    measured("lead_1_power", Unit.KILOWATT, 20, 19, 21);
    measured("lead_1_time_gain", Unit.SECOND, -100, -110, -90);
    assertThat(sentences(List.of(), led(Order.AHEAD, 14, 80, 1)).get(1))
        .isEqualTo(
            "From 14 % to 80 % A took more power than B, by 20 kW (give or take 1.0 kW) on"
                + " average, and B was quicker by 1 min 40 s (give or take 10 s).");
  }

  @Test
  void explains_why_nothing_is_comparable() {
    numbers.add(
        number(
            "mean_lead_shared",
            Unit.KILOWATT,
            new Outcome.Withheld(Message.verbatim("the sessions share no charge"))));
    assertThat(sentences(List.of()))
        .containsExactly(
            "A and B are not compared with each other curve by curve: the sessions share no"
                + " charge.");
  }

  private List<String> sentences(List<String> crossings, Stretch... stretches) {
    PairResult pair =
        new PairResult(
            "other",
            Optional.of(new Interval(14, 80)),
            List.of(stretches),
            crossings,
            Optional.empty(),
            new Numbers(numbers));
    return new PairText(pair, "A", "B", new NumberFormatter(Unit.KILOMETRE))
        .sentences().stream().map(s -> s.replace('\u00a0', ' ')).toList();
  }

  private static Stretch led(Order order, double from, double to, int k) {
    return new Stretch(
        order,
        from,
        to,
        Optional.of(
            new Stretch.Ids(
                "lead_" + k + "_soc_from",
                "lead_" + k + "_soc_to",
                "lead_" + k + "_power",
                "lead_" + k + "_time_gain")));
  }

  private static Stretch open(double from, double to) {
    return new Stretch(Order.UNDECIDED, from, to, Optional.empty());
  }

  private void measured(String id, Unit unit, double value, double low, double high) {
    Estimate estimate = new Estimate(value, new Interval(low, high));
    numbers.add(number(id, unit, new Outcome.Measured(estimate, 0.95)));
  }

  private static ReportNumber number(String id, Unit unit, Outcome outcome) {
    return new ReportNumber(
        Metric.charging(id, id, unit, Method.SOC_AVERAGE),
        outcome,
        new Origin("one", "other", List.of()),
        List.of());
  }
}
