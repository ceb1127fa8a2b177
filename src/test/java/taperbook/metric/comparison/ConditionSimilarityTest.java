package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.quantity.Estimate;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.Session;

/** Conditions at and just beyond the limits of the class. */
final class ConditionSimilarityTest {
  private static Sessions session(double startPercent, double peakKilowatts) {
    double[] seconds = {0, 600};
    return Sessions.session()
        .channel(Channel.SOC, 0.5, seconds, new double[] {startPercent, 60})
        .channel(Channel.POWER, 0.5, seconds, new double[] {peakKilowatts, 50});
  }

  private static List<ConditionItem> unlike(Session... sessions) {
    return ConditionSimilarity.unlike(List.of(sessions));
  }

  private static Session with(ConditionItem item, double amount) {
    return session(10, 100).amount(item, amount, 0.5).build();
  }

  private static Session with(ConditionItem item, String text) {
    return session(10, 100).text(item, text).build();
  }

  @Test
  void temperatures_within_five_degrees_are_similar() {
    for (ConditionItem item :
        List.of(ConditionItem.AMBIENT_TEMPERATURE, ConditionItem.BATTERY_TEMPERATURE_AT_START)) {
      assertThat(unlike(with(item, 10), with(item, 15))).isEmpty();
      assertThat(unlike(with(item, 10), with(item, 15.1))).containsExactly(item);
      assertThat(unlike(with(item, 10), with(item, 13), with(item, 16))).containsExactly(item);
    }
  }

  @Test
  void stations_differ_only_if_one_may_limit_power() {
    ConditionItem rated = ConditionItem.STATION_RATED_POWER;
    // The peak is 100 kW: a station of 120 kW or more limits nothing.
    assertThat(unlike(with(rated, 120), with(rated, 350))).isEmpty();
    assertThat(unlike(with(rated, 119), with(rated, 350))).containsExactly(rated);
    assertThat(unlike(with(rated, 119), with(rated, 119))).isEmpty();
  }

  @Test
  void items_in_words_differ_if_their_words_differ() {
    for (ConditionItem item : List.of(ConditionItem.PRECONDITIONED, ConditionItem.STATION_SHARED)) {
      assertThat(unlike(with(item, "yes"), with(item, "yes"))).isEmpty();
      assertThat(unlike(with(item, "yes"), with(item, "no"))).containsExactly(item);
    }
  }

  @Test
  void unknown_items_are_not_compared() {
    Session silent = session(10, 100).build();
    assertThat(unlike(silent, with(ConditionItem.PRECONDITIONED, "yes"))).isEmpty();
    assertThat(unlike(silent, with(ConditionItem.AMBIENT_TEMPERATURE, -10))).isEmpty();
  }

  @Test
  void temperatures_are_part_of_the_season() {
    Session warm =
        session(10, 100)
            .amount(ConditionItem.AMBIENT_TEMPERATURE, 20, 0.5)
            .amount(ConditionItem.BATTERY_TEMPERATURE_AT_START, 30, 0.5)
            .text(ConditionItem.PRECONDITIONED, "yes")
            .build();
    Session cold =
        session(10, 100)
            .amount(ConditionItem.AMBIENT_TEMPERATURE, -5, 0.5)
            .amount(ConditionItem.BATTERY_TEMPERATURE_AT_START, 5, 0.5)
            .text(ConditionItem.PRECONDITIONED, "no")
            .build();
    assertThat(ConditionSimilarity.unlikeBesideSeason(warm, cold))
        .containsExactly(ConditionItem.PRECONDITIONED.words());
  }

  @Test
  void starts_within_five_percent_are_similar() {
    List<Session> alike = List.of(session(10, 100).build(), session(15, 100).build());
    List<Session> apart = List.of(session(10, 100).build(), session(15.1, 100).build());
    assertThat(ConditionSimilarity.startsApart(alike)).isFalse();
    assertThat(ConditionSimilarity.startsApart(apart)).isTrue();
    assertThat(ConditionSimilarity.differencesOfRuns(alike)).isEmpty();
    assertThat(ConditionSimilarity.differencesOfRuns(apart)).hasSize(1);
    assertThat(
            ConditionSimilarity.differencesOfRuns(
                List.of(
                    with(ConditionItem.PRECONDITIONED, "yes"),
                    with(ConditionItem.PRECONDITIONED, "no"))))
        .containsExactly(ConditionItem.PRECONDITIONED.words());
  }

  @Test
  void drives_within_three_kilometres_per_hour_have_the_same_speed() {
    assertThat(ConditionSimilarity.unlikeBesideSeason(drive(110), drive(113))).isEmpty();
    assertThat(ConditionSimilarity.unlikeBesideSeason(drive(110), drive(113.1)))
        .containsExactly(RangeItem.AVERAGE_SPEED.words());
  }

  private static RangeTest drive(double speed) {
    return Sessions.rangeTest(Map.of(RangeItem.AVERAGE_SPEED, Estimate.around(speed, 0.5)));
  }
}
