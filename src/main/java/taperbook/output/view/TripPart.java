package taperbook.output.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import taperbook.format.NumberFormatter;
import taperbook.format.SessionNames;
import taperbook.i18n.Texts;
import taperbook.output.view.NumberTable.RowView;
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

  TripPart(NumberViews views) {
    this.result = views.result();
    this.views = views;
    this.formatter = views.formatter();
  }

  /**
   * The trip.
   *
   * @param asked the request, the middle of a sentence
   * @param reasons why sessions have no plan
   */
  record TripView(
      boolean present,
      String asked,
      NumberTable<RowView> totals,
      List<String> reasons,
      List<Plan> plans) {}

  /** The stops of a session's car. */
  record Plan(String session, List<Stop> stops) {}

  /** A stop, which may be as long as {@code from} and {@code to} within a minute. */
  record Stop(
      String number,
      NumberView distance,
      NumberView arrival,
      NumberView unplug,
      NumberView time,
      NumberView from,
      NumberView to) {}

  TripView view() {
    Optional<Trip> trip = result.plan().wishes().road().trip();
    return new TripView(
        trip.isPresent(),
        trip.map(this::asked).orElse(""),
        views.bySession(trip.isPresent(), Role.TRIP),
        trip.isPresent() ? reasons() : List.of(),
        result.sessions().stream().map(this::plan).filter(p -> !p.stops().isEmpty()).toList());
  }

  private String asked(Trip trip) {
    return Texts.of(
        "page.trip_part.with_station_every_for_each",
        trip.distance().words().replace(' ', '\u00a0'),
        trip.spacing().words().replace(' ', '\u00a0'),
        formatter.value(Estimate.exactly(trip.secondsPerStop()), Unit.SECOND),
        trip.overhead() == Trip.Overhead.MEASURED
            ? Texts.of("page.trip_part.as_at_reported_stop")
            : "",
        trip.startSoc(),
        trip.reserveSoc(),
        speed(trip));
  }

  private String speed(Trip trip) {
    return trip.kilometresPerHour().isEmpty()
        ? ""
        : Texts.of(
            "page.trip_part.at",
            formatter.exactly(trip.kilometresPerHour().getAsDouble(), Unit.KILOMETRE_PER_HOUR));
  }

  /** Returns the reasons why sessions have no plan. */
  private List<String> reasons() {
    return result.sessions().stream()
        .flatMap(session -> reason(session).map(why -> head(session) + ": " + why).stream())
        .toList();
  }

  private static Optional<String> reason(SessionResult session) {
    return session.numbers().find("trip_time").flatMap(ReportNumber::withheld);
  }

  private String head(SessionResult session) {
    List<SessionResult> all = result.sessions();
    return SessionNames.heads(all.stream().map(SessionResult::session).toList())
        .get(all.indexOf(session));
  }

  private Plan plan(SessionResult session) {
    List<Stop> stops = new ArrayList<>();
    for (int k = 1; session.numbers().find(RoadWishes.stopId(k, "time")).isPresent(); k++) {
      int stop = k;
      Function<String, NumberView> number =
          what -> views.view(session, RoadWishes.stopId(stop, what));
      stops.add(
          new Stop(
              String.valueOf(k),
              number.apply("distance"),
              number.apply("arrival_soc"),
              number.apply("unplug_soc"),
              number.apply("time"),
              number.apply("unplug_soc_from"),
              number.apply("unplug_soc_to")));
    }
    return new Plan(head(session), stops);
  }
}
