package taperbook.output.view;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import taperbook.format.NumberFormatter;
import taperbook.format.SessionNames;
import taperbook.i18n.Texts;
import taperbook.plan.Basis;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;
import taperbook.session.Caveat;
import taperbook.session.ConditionItem;
import taperbook.session.Facts;
import taperbook.session.Item;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;

/**
 * The differences between compared sessions other than their curves, which may explain a
 * difference, and because of which numbers have no best.
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

  private static final Set<Basis> OF_A_DRIVE = Set.of(Basis.DRIVEN, Basis.ENERGY, Basis.DISPLAYED);

  /** Conditions that affect the consumption of a drive. */
  private static final List<RangeItem> OF_DRIVES =
      List.of(
          RangeItem.AVERAGE_SPEED,
          RangeItem.AMBIENT_TEMPERATURE,
          RangeItem.WIND_SPEED,
          RangeItem.CLIMATE_CONTROL,
          RangeItem.ROUTE);

  private final List<SessionResult> sessions;
  private final List<ConditionItem> unlike;
  private final NumberFormatter formatter;

  ConditionDifferences(ReportResult result) {
    this.sessions = result.sessions();
    this.unlike = result.unlike();
    this.formatter = new NumberFormatter(result.plan().style());
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

  /** Returns true if a number of a row may be marked as the best. */
  boolean mayMark(List<Optional<ReportNumber>> row) {
    boolean driven =
        row.stream()
            .flatMap(Optional::stream)
            .anyMatch(n -> OF_A_DRIVE.contains(n.metric().basis()));
    return unlike.isEmpty() && !(driven && areDrivesApart());
  }

  private boolean areDrivesApart() {
    return sessions.stream()
            .flatMap(s -> s.rangeTest().stream())
            .map(RangeTest::name)
            .distinct()
            .count()
        > 1;
  }

  /** Describes what is not marked and why, with the conditions that differ. */
  List<String> unmarked() {
    List<String> sentences = new ArrayList<>();
    if (!unlike.isEmpty()) {
      sentences.add(
          Texts.of(
              "page.comparison_caution.sessions_are_not_alike_in",
              unlike.stream()
                  .map(item -> stated(item, s -> Optional.of(s.session().conditions())))
                  .collect(Collectors.joining(", "))));
    }
    if (areDrivesApart()) {
      String differ =
          OF_DRIVES.stream()
              .map(item -> stated(item, s -> s.rangeTest().map(RangeTest::facts)))
              .filter(words -> !words.isEmpty())
              .collect(Collectors.joining(", "));
      sentences.add(
          Texts.of(
              "page.comparison_caution.each_car_was_driven_in",
              differ.isEmpty()
                  ? ""
                  : Texts.of("page.comparison_caution.and_tests_differ_in", differ)));
    }
    return sentences;
  }

  /** Returns an item with the value of each session in brackets; empty if they are equal. */
  private <I extends Enum<I> & Item> String stated(
      I item, Function<SessionResult, Optional<Facts<I>>> facts) {
    List<String> values =
        sessions.stream()
            .map(s -> facts.apply(s).flatMap(f -> f.known(item)))
            .map(f -> FactTexts.valueIfKnown(f, formatter))
            .toList();
    if (values.stream().distinct().count() < 2) {
      return "";
    }
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      cells.add(SessionNames.letter(i) + " " + values.get(i));
    }
    return item.words() + " (" + String.join(", ", cells) + ")";
  }
}
