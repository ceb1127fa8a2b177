package taperbook.output.view;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import taperbook.format.NumberFormatter;
import taperbook.result.SessionResult;
import taperbook.session.Caveat;
import taperbook.session.ConditionItem;

/**
 * The differences between compared sessions other than their curves, which may explain a
 * difference.
 */
final class ConditionDifferences {
  /** Conditions that affect how a car charges. */
  private static final List<ConditionItem> BEARING =
      List.of(
          ConditionItem.BATTERY_TEMPERATURE_AT_START,
          ConditionItem.PRECONDITIONED,
          ConditionItem.PRECONDITIONING_TIME,
          ConditionItem.AMBIENT_TEMPERATURE,
          ConditionItem.STATION_RATED_POWER,
          ConditionItem.STATION_SHARED,
          ConditionItem.ODOMETER,
          ConditionItem.SOFTWARE_VERSION,
          ConditionItem.MODEL_YEAR,
          ConditionItem.BATTERY_USABLE_ENERGY,
          ConditionItem.VEHICLE_RATED_PEAK_POWER,
          ConditionItem.READ_FROM);

  private final List<SessionResult> sessions;
  private final NumberFormatter formatter;

  ConditionDifferences(List<SessionResult> sessions, NumberFormatter formatter) {
    this.sessions = List.copyOf(sessions);
    this.formatter = formatter;
  }

  /** A condition with its value in each session. */
  record Condition(String item, List<String> cells) {}

  /** A kind of caveat with the sentences of each session. */
  record Caveats(String kind, List<String> cells) {}

  /** Returns conditions with different values. */
  List<Condition> conditions() {
    List<Condition> rows = new ArrayList<>();
    for (ConditionItem item : BEARING) {
      List<String> cells = sessions.stream().map(s -> cell(s, item)).toList();
      if (cells.stream().distinct().count() > 1) {
        rows.add(new Condition(FactTexts.capital(item.words()), cells));
      }
    }
    return rows;
  }

  private String cell(SessionResult session, ConditionItem item) {
    return FactTexts.valueIfKnown(session.session().conditions().known(item), formatter);
  }

  /** Returns caveats that not all sessions share. */
  List<Caveats> caveats() {
    List<Set<Caveat>> caveats = sessions.stream().map(CaveatMarks::all).toList();
    Set<Caveat> common = new LinkedHashSet<>(caveats.get(0));
    caveats.forEach(common::retainAll);
    List<Caveats> rows = new ArrayList<>();
    for (Caveat.Kind kind : Caveat.Kind.values()) {
      List<String> cells = caveats.stream().map(set -> own(set, common, kind)).toList();
      if (cells.stream().anyMatch(c -> !c.isEmpty())) {
        rows.add(new Caveats(kind.title(), cells));
      }
    }
    return rows;
  }

  private static String own(Set<Caveat> all, Set<Caveat> common, Caveat.Kind kind) {
    return all.stream()
        .filter(c -> c.kind() == kind && !common.contains(c))
        .map(Caveat::sentence)
        .collect(Collectors.joining(" "));
  }
}
