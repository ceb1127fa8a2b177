package taperbook.output.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import taperbook.format.Labels;
import taperbook.format.NumberFormatter;
import taperbook.session.ConditionItem;
import taperbook.session.Fact;
import taperbook.session.Session;

/** The main conditions of a session: those that determine its possible charging speed. */
final class SessionConditions {
  /**
   * A condition.
   *
   * @param label its column heading
   * @param brief its text in a line of conditions, with the value or for yes
   * @param no its text for no; empty if it is not a yes-no question
   */
  private record Asked(ConditionItem item, String label, String brief, String no) {}

  private static final List<Asked> ASKED =
      List.of(
          new Asked(
              ConditionItem.BATTERY_TEMPERATURE_AT_START,
              Labels.of("column.battery_temperature"),
              "day.battery",
              ""),
          new Asked(
              ConditionItem.PRECONDITIONED,
              Labels.of("head.preconditioned"),
              "day.preconditioned",
              "day.not_preconditioned"),
          new Asked(ConditionItem.AMBIENT_TEMPERATURE, Labels.of("head.air"), "day.air", ""),
          new Asked(
              ConditionItem.STATION_RATED_POWER,
              Labels.of("head.station_rated"),
              "day.station",
              ""),
          new Asked(
              ConditionItem.STATION_SHARED,
              Labels.of("head.station_shared"),
              "day.station_shared",
              "day.station_not_shared"));

  private SessionConditions() {}

  /** Returns each with {@code label}, {@code value}, {@code known} and {@code brief}. */
  static List<Map<String, Object>> of(Session session, NumberFormatter formatter) {
    List<Map<String, Object>> list = new ArrayList<>();
    for (Asked asked : ASKED) {
      Optional<Fact> fact = session.conditions().known(asked.item());
      String value = fact.map(f -> FactTexts.value(f, formatter)).orElse("not known");
      list.add(
          Map.of(
              "label", asked.label(),
              "value", value,
              "known", fact.map(f -> f.howKnown().words()).orElse(""),
              "brief", brief(asked, fact.isPresent(), value)));
    }
    return list;
  }

  private static String brief(Asked asked, boolean known, String value) {
    if (!known) {
      return Labels.of("day.not_known", asked.item().words());
    }
    if (asked.no().isEmpty()) {
      return Labels.of(asked.brief(), value);
    }
    return Labels.of(value.equals("no") ? asked.no() : asked.brief());
  }
}
