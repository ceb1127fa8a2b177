package taperbook.write.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import taperbook.model.ConditionItem;
import taperbook.model.Fact;
import taperbook.model.Session;
import taperbook.words.Labels;

/** What a reader asks first about a session: what decides how fast it could be at all. */
final class DayConditions {
  private record Asked(ConditionItem item, String label) {}

  private static final List<Asked> ASKED =
      List.of(
          new Asked(
              ConditionItem.BATTERY_TEMPERATURE_AT_START, Labels.of("column.battery_temperature")),
          new Asked(ConditionItem.PRECONDITIONED, Labels.of("head.preconditioned")),
          new Asked(ConditionItem.AMBIENT_TEMPERATURE, Labels.of("head.air")),
          new Asked(ConditionItem.STATION_RATED_POWER, Labels.of("head.station_rated")),
          new Asked(ConditionItem.STATION_SHARED, Labels.of("head.station_shared")));

  private DayConditions() {}

  /** Each with {@code label}, {@code value} and {@code known}; one not known says so. */
  static List<Map<String, Object>> of(Session session) {
    List<Map<String, Object>> list = new ArrayList<>();
    for (Asked asked : ASKED) {
      Optional<Fact> fact = session.conditions().known(asked.item());
      list.add(
          Map.of(
              "label", asked.label(),
              "value", fact.map(FactTexts::value).orElse("not known"),
              "known", fact.map(f -> f.howKnown().words()).orElse("")));
    }
    return list;
  }
}
