package taperbook.output.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import taperbook.format.NumberFormatter;
import taperbook.format.SessionNames;
import taperbook.plan.RoadWishes;
import taperbook.plan.Trip;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.Role;
import taperbook.result.SessionResult;

/** The trip: the request, the totals of all cars, and the stops of each. */
final class TripPart {
  private final ReportResult result;
  private final NumberViews views;
  private final NumberFormatter formatter;
  private final NumberTable table;

  TripPart(ReportResult result, NumberViews views, NumberFormatter formatter) {
    this.result = result;
    this.views = views;
    this.formatter = formatter;
    this.table = new NumberTable(views, formatter);
  }

  Map<String, Object> map() {
    Optional<Trip> trip = result.plan().wishes().road().trip();
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("present", trip.isPresent());
    map.put("asked", trip.map(this::asked).orElse(""));
    map.put("totals", SideBySide.table(result, table, trip.isPresent(), Role.TRIP));
    map.put("reasons", trip.isPresent() ? reasons() : List.of());
    map.put("plans", result.sessions().stream().map(this::plan).filter(p -> !p.isEmpty()).toList());
    return map;
  }

  private String asked(Trip trip) {
    return trip.distance().words().replace(' ', '\u00a0')
        + " with a station every "
        + trip.spacing().words().replace(' ', '\u00a0')
        + ", "
        + formatter.value(Estimate.exactly(trip.secondsPerStop()), Unit.SECOND)
        + " for each stop beside charging"
        + (trip.overhead() == Trip.Overhead.MEASURED ? ", as at the reported stop" : "")
        + ", from "
        + trip.startSoc()
        + "\u00a0% at the start, never below "
        + trip.reserveSoc()
        + "\u00a0%"
        + speed(trip);
  }

  private String speed(Trip trip) {
    return trip.kilometresPerHour().isEmpty()
        ? ""
        : ", at "
            + formatter.exactly(trip.kilometresPerHour().getAsDouble(), Unit.KILOMETRE_PER_HOUR);
  }

  /** Returns the reasons why sessions have no plan. */
  private List<String> reasons() {
    List<String> reasons = new ArrayList<>();
    for (SessionResult session : result.sessions()) {
      session
          .numbers()
          .find("trip_time")
          .flatMap(ReportNumber::withheld)
          .ifPresent(why -> reasons.add(head(session) + ": " + why));
    }
    return reasons;
  }

  private String head(SessionResult session) {
    List<SessionResult> all = result.sessions();
    return SessionNames.heads(all.stream().map(SessionResult::session).toList())
        .get(all.indexOf(session));
  }

  private Map<String, Object> plan(SessionResult session) {
    List<Map<String, Object>> stops = new ArrayList<>();
    for (int k = 1; session.numbers().find(RoadWishes.stopId(k, "time")).isPresent(); k++) {
      Map<String, Object> stop = new LinkedHashMap<>();
      stop.put("number", String.valueOf(k));
      stop.put("distance", views.view(session, RoadWishes.stopId(k, "distance")));
      stop.put("arrival", views.view(session, RoadWishes.stopId(k, "arrival_soc")));
      stop.put("unplug", views.view(session, RoadWishes.stopId(k, "unplug_soc")));
      stop.put("time", views.view(session, RoadWishes.stopId(k, "time")));
      stop.put("from", views.view(session, RoadWishes.stopId(k, "unplug_soc_from")));
      stop.put("to", views.view(session, RoadWishes.stopId(k, "unplug_soc_to")));
      stops.add(stop);
    }
    return stops.isEmpty() ? Map.of() : Map.of("session", head(session), "stops", stops);
  }
}
