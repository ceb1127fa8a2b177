package taperbook.output.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.output.view.NumberTable.RowView;
import taperbook.plan.StopMinutes;
import taperbook.quantity.Estimate;
import taperbook.result.CrossCheck;
import taperbook.result.Numbers;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;

/** The tables of marks, distances, segments of the curve, and cross-checks. */
final class Tables {
  private final ReportResult result;
  private final NumberViews views;
  private final NumberFormatter formatter;

  /**
   * A cross-check.
   *
   * @param state {@code agrees}, {@code differs} or {@code open}; an open one has no sides
   */
  record Check(
      String title,
      String session,
      String state,
      Optional<Side> first,
      Optional<Side> second,
      String verdict) {}

  /** One side of a check. */
  record Side(String label, String value, String range) {}

  /** A segment of the curve. */
  record Segment(String kind, NumberView from, NumberView to, NumberView power, NumberView slope) {}

  /** A jump of power between segments. */
  record Step(NumberView step, NumberView height) {}

  Tables(NumberViews views) {
    this.result = views.result();
    this.views = views;
    this.formatter = views.formatter();
  }

  /** Returns one row per state of charge reached. */
  NumberTable<RowView> milestones() {
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
    return views.byColumn(
        Texts.of("head.soc"),
        Texts.all("head.time", "head.power_there", "number.energy_added", "head.distance_added"),
        rows);
  }

  /** Returns one row per requested distance. */
  NumberTable<RowView> distances() {
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
    return views.byColumn(
        Texts.of("head.distance"),
        Texts.all("head.charge_needed", "head.driven_basis", "head.by_energy", "head.rated_basis"),
        rows);
  }

  /** Returns one row per length of stop that the readings cover. */
  NumberTable<RowView> stops() {
    List<NumberTable.Row> rows =
        StopMinutes.ALL.stream()
            .map(
                m ->
                    row(
                        m + "\u00a0min",
                        StopMinutes.distanceId(m),
                        StopMinutes.socId(m),
                        StopMinutes.energyId(m)))
            .filter(NumberTable.Row::hasEstimate)
            .toList();
    return views.byColumn(
        Texts.of("head.after"),
        Texts.all("head.distance_added", "head.soc", "number.energy_added"),
        rows);
  }

  private Numbers main() {
    return result.main().numbers();
  }

  private NumberTable.Row row(String label, String... ids) {
    return new NumberTable.Row(label, Stream.of(ids).map(main()::find).toList());
  }

  /** Returns the charging speed over each window, as far as measured. */
  List<NumberView> speeds() {
    return measured(
        result.plan().wishes().windows().stream().map(w -> "charging_speed_" + w.idPart()));
  }

  /** Returns the phases of the stop from arrival to departure, as far as measured. */
  List<NumberView> door() {
    return measured(
        Stream.of(
            "arrival_to_power_time",
            "plug_in_to_power_time",
            "stop_door_to_door",
            "stop_overhead"));
  }

  private List<NumberView> measured(Stream<String> ids) {
    return ids.flatMap(id -> main().measured(id).stream()).map(views::view).toList();
  }

  /** Returns the segments of the curve, and the steps between them. */
  List<Record> segments() {
    List<Record> rows = new ArrayList<>();
    for (int k = 1; main().find("taper_segment_" + k + "_soc_from").isPresent(); k++) {
      String segment = "taper_segment_" + k;
      rows.add(
          new Segment(
              kind(segment),
              view(segment + "_soc_from"),
              view(segment + "_soc_to"),
              view(segment + "_power"),
              view(segment + "_slope")));
      String step = "taper_step_" + k;
      if (main().find(step + "_soc").isPresent()) {
        rows.add(new Step(view(step + "_soc"), view(step + "_height")));
      }
    }
    return rows;
  }

  private NumberView view(String id) {
    return views.view(result.main(), id);
  }

  /** Extracts the kind of a segment from its label: {@code Segment 2, plateau: from}. */
  private String kind(String segment) {
    String label = main().get(segment + "_soc_from").label();
    return FactTexts.capital(label.substring(label.indexOf(", ") + 2, label.lastIndexOf(':')));
  }

  /** Returns one row per check, of all sessions. */
  List<Check> checks() {
    List<Check> rows = new ArrayList<>();
    for (SessionResult session : result.sessions()) {
      String own = session.session().name();
      String name = own.equals(result.main().session().name()) ? "" : own;
      session.checks().forEach(check -> rows.add(check(name, check)));
    }
    return rows;
  }

  private Check check(String session, CrossCheck check) {
    return check
        .outcome()
        .fold(
            compared ->
                new Check(
                    check.title(),
                    session,
                    compared.agrees() ? "agrees" : "differs",
                    side(check, compared.first()),
                    side(check, compared.second()),
                    verdict(check, compared)),
            open ->
                new Check(
                    check.title(),
                    session,
                    "open",
                    Optional.empty(),
                    Optional.empty(),
                    Texts.of("page.tables.cannot_be_checked", open.reason())));
  }

  private Optional<Side> side(CrossCheck check, CrossCheck.Side side) {
    return Optional.of(
        new Side(
            side.label(),
            formatter.value(side.estimate(), check.unit()),
            formatter.range(side.estimate().bounds(), check.unit())));
  }

  private String verdict(CrossCheck check, CrossCheck.Compared compared) {
    if (compared.agrees()) {
      return NumberFormatter.agreement(compared);
    }
    Estimate signed = compared.difference();
    Estimate difference = signed.value() < 0 ? signed.times(-1) : signed;
    return Texts.of(
        "page.tables.differ_by_more_than",
        formatter.value(difference, check.unit()),
        formatter.range(difference.bounds(), check.unit()),
        NumberFormatter.allowed(compared));
  }
}
