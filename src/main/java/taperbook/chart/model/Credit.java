package taperbook.chart.model;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import taperbook.format.Labels;
import taperbook.format.NumberFormatter;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.ReportResult;
import taperbook.session.ConditionItem;
import taperbook.session.Facts;
import taperbook.session.Session;

/** The subject, place, date and author of a chart, so that it can be used on its own. */
public final class Credit {
  private Credit() {}

  /**
   * Returns car, day, place, temperatures, runs and tester of the reported session, as far as
   * known.
   */
  static List<String> of(ReportResult result) {
    Session session = result.main().session();
    Facts<ConditionItem> conditions = session.conditions();
    List<String> parts = new ArrayList<>(List.of(session.vehicle()));
    conditions.text(ConditionItem.DATE).map(NumberFormatter::dateOrAsIs).ifPresent(parts::add);
    conditions.text(ConditionItem.PLACE).ifPresent(parts::add);
    NumberFormatter formatter = new NumberFormatter(result.plan().style());
    List<String> temperatures =
        Stream.of(
                degrees(conditions.amount(ConditionItem.AMBIENT_TEMPERATURE), formatter)
                    .map(t -> Labels.of("credit.air", t)),
                degrees(conditions.amount(ConditionItem.BATTERY_TEMPERATURE_AT_START), formatter)
                    .map(t -> Labels.of("credit.battery", t)))
            .flatMap(Optional::stream)
            .toList();
    if (!temperatures.isEmpty()) {
      parts.add(String.join(", ", temperatures));
    }
    int runs = 1 + result.runs().repeats().size();
    parts.add(runs == 1 ? Labels.of("credit.one_run") : Labels.of("credit.runs", runs));
    return withAuthor(parts, result);
  }

  /**
   * Returns sessions of a report by their names, with day and place.
   *
   * @param names their names in the chart
   * @param sessions as many sessions
   */
  public static List<String> of(ReportResult result, List<String> names, List<Session> sessions) {
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      parts.add(dated(names.get(i), sessions.get(i)));
    }
    List<String> places =
        sessions.stream().flatMap(s -> s.conditions().text(ConditionItem.PLACE).stream()).toList();
    if (places.size() == sessions.size() && new HashSet<>(places).size() == 1) {
      parts.add(places.get(0));
    }
    if (result.runs().repeats().isEmpty()) {
      parts.add(Labels.of("credit.one_run_each"));
    }
    return withAuthor(parts, result);
  }

  /** Returns the car and the tester, for charts that do not belong to one session. */
  static List<String> ofCar(ReportResult result) {
    return withAuthor(new ArrayList<>(List.of(result.main().session().vehicle())), result);
  }

  private static List<String> withAuthor(List<String> parts, ReportResult result) {
    String author = result.plan().heading().author();
    if (!author.isEmpty()) {
      parts.add(author);
    }
    return parts;
  }

  private static String dated(String name, Session session) {
    return session
        .conditions()
        .text(ConditionItem.DATE)
        .map(date -> name + ", " + NumberFormatter.dateOrAsIs(date))
        .orElse(name);
  }

  private static Optional<String> degrees(
      Optional<Estimate> temperature, NumberFormatter formatter) {
    return temperature.map(t -> formatter.value(t, Unit.CELSIUS));
  }
}
