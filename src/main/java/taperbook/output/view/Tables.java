package taperbook.output.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import taperbook.format.Labels;
import taperbook.format.NumberFormatter;
import taperbook.plan.StopMinutes;
import taperbook.quantity.Estimate;
import taperbook.result.CrossCheck;
import taperbook.result.Numbers;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;

/** The tables of marks, distances and cross-checks. */
final class Tables {
  private final ReportResult result;
  private final NumberViews views;
  private final NumberFormatter formatter;
  private final NumberTable table;

  Tables(ReportResult result, NumberViews views, NumberFormatter formatter) {
    this.result = result;
    this.views = views;
    this.formatter = formatter;
    this.table = new NumberTable(views, formatter);
  }

  /** Returns one row per state of charge reached. */
  Map<String, Object> milestones() {
    List<NumberTable.Row> rows =
        result.plan().wishes().socMarks().stream()
            .filter(m -> main().estimate("time_to_soc_" + m).isPresent())
            .map(
                m ->
                    row(
                        m + "\u00a0%",
                        "time_to_soc_" + m,
                        "power_at_soc_" + m,
                        "energy_to_soc_" + m,
                        "distance_to_soc_" + m))
            .toList();
    return table.byColumn(
        Labels.of("head.soc"),
        List.of(
            Labels.of("head.time"),
            Labels.of("head.power_there"),
            Labels.of("number.energy_added"),
            Labels.of("head.distance_added")),
        rows);
  }

  /** Returns one row per requested distance. */
  Map<String, Object> distances() {
    List<NumberTable.Row> rows =
        result.plan().wishes().distances().stream()
            .map(
                d ->
                    row(
                        d.words().replace(' ', '\u00a0'),
                        "soc_for_" + d.idPart(),
                        "time_to_add_" + d.idPart(),
                        "time_to_add_" + d.idPart() + "_by_energy",
                        "time_to_add_" + d.idPart() + "_rated"))
            .toList();
    return table.byColumn(
        Labels.of("head.distance"),
        List.of(
            Labels.of("head.charge_needed"),
            Labels.of("head.driven_basis"),
            Labels.of("head.by_energy"),
            Labels.of("head.rated_basis")),
        rows);
  }

  /** Returns one row per length of stop that the readings cover. */
  Map<String, Object> stops() {
    List<NumberTable.Row> rows =
        StopMinutes.ALL.stream()
            .map(
                m ->
                    row(
                        m + "\u00a0min",
                        StopMinutes.distanceId(m),
                        StopMinutes.socId(m),
                        StopMinutes.energyId(m)))
            .filter(
                r ->
                    r.numbers().stream()
                        .anyMatch(n -> n.flatMap(ReportNumber::estimate).isPresent()))
            .toList();
    return table.byColumn(
        Labels.of("head.after"),
        List.of(
            Labels.of("head.distance_added"),
            Labels.of("head.soc"),
            Labels.of("number.energy_added")),
        rows);
  }

  private Numbers main() {
    return result.main().numbers();
  }

  private NumberTable.Row row(String label, String... ids) {
    return new NumberTable.Row(label, Stream.of(ids).map(main()::find).toList());
  }

  /** Returns the charging speed over each window, as far as measured. */
  List<Map<String, Object>> speeds() {
    return result.plan().wishes().windows().stream()
        .flatMap(w -> result.main().numbers().find("charging_speed_" + w.idPart()).stream())
        .filter(n -> n.estimate().isPresent())
        .map(views::view)
        .toList();
  }

  /** Returns the phases of the stop from arrival to departure, as far as measured. */
  List<Map<String, Object>> door() {
    return Stream.of(
            "arrival_to_power_time", "plug_in_to_power_time", "stop_door_to_door", "stop_overhead")
        .flatMap(id -> result.main().numbers().find(id).stream())
        .filter(n -> n.estimate().isPresent())
        .map(views::view)
        .toList();
  }

  /** Returns one row per check, of all sessions. */
  List<Map<String, Object>> checks() {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (SessionResult session : result.sessions()) {
      String own = session.session().name();
      String name = own.equals(result.main().session().name()) ? "" : own;
      session.checks().forEach(check -> rows.add(check(name, check)));
    }
    return rows;
  }

  private Map<String, Object> check(String session, CrossCheck check) {
    return check
        .outcome()
        .fold(
            compared ->
                Map.of(
                    "title", check.title(),
                    "session", session,
                    "state", compared.agrees() ? "agrees" : "differs",
                    "first", side(check, compared.first()),
                    "second", side(check, compared.second()),
                    "verdict", verdict(check, compared)),
            open ->
                Map.of(
                    "title",
                    check.title(),
                    "session",
                    session,
                    "state",
                    "open",
                    "verdict",
                    "cannot be checked: " + open.reason()));
  }

  private Map<String, Object> side(CrossCheck check, CrossCheck.Side side) {
    return views.view(side.label(), side.estimate(), check.unit());
  }

  private String verdict(CrossCheck check, CrossCheck.Compared compared) {
    if (compared.agrees()) {
      return NumberFormatter.agreement(compared);
    }
    Estimate signed = compared.difference();
    Estimate difference = signed.value() < 0 ? signed.times(-1) : signed;
    return "differ by "
        + formatter.value(difference, check.unit())
        + " ("
        + formatter.range(difference.bounds(), check.unit())
        + "), more than "
        + NumberFormatter.allowed(compared);
  }
}
