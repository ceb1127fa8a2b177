package taperbook.write.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import taperbook.model.CrossCheck;
import taperbook.model.Estimate;
import taperbook.model.ReportResult;
import taperbook.model.SessionResult;
import taperbook.model.StopMinutes;
import taperbook.model.WantedDistance;
import taperbook.words.Wording;

/** The tables of marks, distances and cross-checks. */
final class Tables {
  private final ReportResult result;
  private final NumberViews views;
  private final Wording wording;

  Tables(ReportResult result, NumberViews views, Wording wording) {
    this.result = result;
    this.views = views;
    this.wording = wording;
  }

  /** One row for each state of charge that was reached. */
  List<Map<String, Object>> milestones() {
    SessionResult main = result.main();
    List<Map<String, Object>> rows = new ArrayList<>();
    for (int mark : result.plan().wishes().socMarks()) {
      if (main.numbers().estimate("time_to_soc_" + mark).isPresent()) {
        rows.add(
            Map.of(
                "mark", mark + "\u00a0%",
                "time", views.view(main, "time_to_soc_" + mark),
                "energy", views.view(main, "energy_to_soc_" + mark),
                "power", views.view(main, "power_at_soc_" + mark),
                "distance", views.view(main, "distance_to_soc_" + mark)));
      }
    }
    return rows;
  }

  /** One row for each distance that the tester asked for. */
  List<Map<String, Object>> distances() {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (WantedDistance distance : result.plan().wishes().distances()) {
      String id = "time_to_add_" + distance.idPart();
      rows.add(
          Map.of(
              "distance", distance.words().replace(' ', '\u00a0'),
              "soc", views.view(result.main(), "soc_for_" + distance.idPart()),
              "driven", views.view(result.main(), id),
              "energy", views.view(result.main(), id + "_by_energy"),
              "rated", views.view(result.main(), id + "_rated")));
    }
    return rows;
  }

  /** One row for each length of a stop that the readings reach. */
  List<Map<String, Object>> stops() {
    SessionResult main = result.main();
    List<Map<String, Object>> rows = new ArrayList<>();
    for (int minutes : StopMinutes.ALL) {
      boolean reached =
          Stream.of(
                  StopMinutes.distanceId(minutes),
                  StopMinutes.socId(minutes),
                  StopMinutes.energyId(minutes))
              .anyMatch(id -> main.numbers().estimate(id).isPresent());
      if (reached) {
        rows.add(
            Map.of(
                "after", minutes + "\u00a0min",
                "distance", views.view(main, StopMinutes.distanceId(minutes)),
                "soc", views.view(main, StopMinutes.socId(minutes)),
                "energy", views.view(main, StopMinutes.energyId(minutes))));
      }
    }
    return rows;
  }

  /** The speed of charging over each window, as far as it was measured. */
  List<Map<String, Object>> speeds() {
    return result.plan().wishes().windows().stream()
        .flatMap(w -> result.main().numbers().find("charging_speed_" + w.idPart()).stream())
        .filter(n -> n.estimate().isPresent())
        .map(views::view)
        .toList();
  }

  /** What was measured of the stop from arriving to leaving. */
  List<Map<String, Object>> door() {
    return Stream.of(
            "arrival_to_power_time", "plug_in_to_power_time", "stop_door_to_door", "stop_overhead")
        .flatMap(id -> result.main().numbers().find(id).stream())
        .filter(n -> n.estimate().isPresent())
        .map(views::view)
        .toList();
  }

  /** One row for each check, of all sessions. */
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
      return Wording.agreement(compared);
    }
    Estimate signed = compared.difference();
    Estimate difference = signed.value() < 0 ? signed.times(-1) : signed;
    return "differ by "
        + wording.value(difference, check.unit())
        + " ("
        + wording.range(difference.bounds(), check.unit())
        + "), more than "
        + Wording.allowed(compared);
  }
}
