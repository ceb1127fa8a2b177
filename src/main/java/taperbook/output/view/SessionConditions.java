package taperbook.output.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
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
              Texts.of("column.battery_temperature"),
              "day.battery",
              ""),
          new Asked(
              ConditionItem.PRECONDITIONED,
              Texts.of("head.preconditioned"),
              "day.preconditioned",
              "day.not_preconditioned"),
          new Asked(ConditionItem.AMBIENT_TEMPERATURE, Texts.of("head.air"), "day.air", ""),
          new Asked(
              ConditionItem.STATION_RATED_POWER, Texts.of("head.station_rated"), "day.station", ""),
          new Asked(
              ConditionItem.STATION_SHARED,
              Texts.of("head.station_shared"),
              "day.station_shared",
              "day.station_not_shared"));

  /** A condition as stated, and in a short text. */
  record Condition(String label, String value, String known, String brief) {}

  private SessionConditions() {}

  /** Returns the main conditions. */
  static List<Condition> of(Session session, NumberFormatter formatter) {
    List<Condition> list = new ArrayList<>();
    for (Asked asked : ASKED) {
      Optional<Fact> fact = session.conditions().known(asked.item());
      String value = FactTexts.valueIfKnown(fact, formatter);
      list.add(
          new Condition(
              asked.label(),
              value,
              fact.map(f -> f.howKnown().words()).orElse(""),
              brief(asked, fact.isPresent(), value)));
    }
    return list;
  }

  private static String brief(Asked asked, boolean known, String value) {
    if (!known) {
      return Texts.of("day.not_known", asked.item().words());
    }
    if (asked.no().isEmpty()) {
      return Texts.of(asked.brief(), value);
    }
    return Texts.of(value.equals("no") ? asked.no() : asked.brief());
  }
}
