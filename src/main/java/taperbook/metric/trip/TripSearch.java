package taperbook.metric.trip;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Finds the exact fastest plan of a trip by dynamic programming (R. Bellman, Dynamic Programming,
 * 1957: any first part of a best plan is a best plan for that part).
 *
 * <pre>
 *   C(j, v) = min over i &lt; j and u of  C(i, u) + overhead + t(v) - t(u - share(i, j))
 * </pre>
 *
 * with {@code C(j, v)} the least time of stops up to leaving station {@code j} at {@code v} %, and
 * the clock {@code t} of the session. The plan unplugs at one of the {@link UnplugLevels}; no such
 * plan is faster by more than a tie, and no tied plan has fewer stops. Stops use only states of
 * charge that the session covers.
 */
public final class TripSearch {
  /** Plans that differ by less are tied: times are printed in whole minutes, s. */
  private static final double TIE_SECONDS = 30;

  private final ChargeTimes clock;
  private final TripTask task;
  private final UnplugLevels levels;
  private final List<List<Departure>> byStops = new ArrayList<>();

  /** Creates a search for a car with this charging curve. */
  public TripSearch(ChargeTimes clock, TripTask task) {
    this.clock = clock;
    this.task = task;
    this.levels = new UnplugLevels(clock, task);
    byStops.add(List.of(Departure.atStart(task.startPercent())));
  }

  /**
   * Returns the plan with the fewest stops among those tied with the fastest; empty if there is
   * none.
   */
  public Optional<TripPlan> best() {
    return fastest().map(this::tiedWithFewestStops);
  }

  private TripPlan tiedWithFewestStops(TripPlan fastest) {
    for (int stops = 0; stops < fastest.stops().size(); stops++) {
      Optional<TripPlan> fewer = best(stops);
      if (fewer.isPresent() && fewer.get().stopSeconds() <= fastest.stopSeconds() + TIE_SECONDS) {
        return fewer.get();
      }
    }
    return fastest;
  }

  private Optional<TripPlan> fastest() {
    List<Departure> all = new ArrayList<>(byStops.get(0));
    for (int station = 1; station <= task.stations(); station++) {
      all.addAll(departures(station, all));
    }
    return finished(all);
  }

  /** Returns the fastest plan with a number of stops; empty if there is none. */
  public Optional<TripPlan> best(int stops) {
    while (byStops.size() <= stops) {
      List<Departure> before = byStops.get(byStops.size() - 1);
      List<Departure> next = new ArrayList<>();
      for (int station = 1; station <= task.stations(); station++) {
        next.addAll(departures(station, before));
      }
      byStops.add(next);
    }
    return finished(byStops.get(stops));
  }

  /** An arrival: its state of charge, and the time so far minus the clock on arrival. */
  private record Arrival(double percent, double seconds, Departure from) {}

  /** Returns the best departures of a station for each level, given those of earlier stations. */
  private List<Departure> departures(int station, List<Departure> earlier) {
    List<Arrival> arrivals = new ArrayList<>();
    for (Departure from : earlier) {
      double percent = from.unplugPercent() - task.share(from.station(), station);
      boolean possible =
          from.station() < station
              && percent >= levels.floorPercent() - UnplugLevels.SLACK_PERCENT
              && percent <= clock.high() + UnplugLevels.SLACK_PERCENT;
      if (possible) {
        double seconds = from.seconds() + task.secondsPerStop() - clock.secondAt(percent);
        arrivals.add(new Arrival(percent, seconds, from));
      }
    }
    arrivals.sort(Comparator.comparingDouble(Arrival::percent));
    List<Departure> departures = new ArrayList<>();
    Arrival best = null;
    int next = 0;
    for (double level : levels.at(station)) {
      double most = level + UnplugLevels.SLACK_PERCENT;
      while (next < arrivals.size() && arrivals.get(next).percent() <= most) {
        best = faster(best, arrivals.get(next));
        next++;
      }
      if (best != null) {
        double seconds = best.seconds() + clock.secondAt(level);
        departures.add(new Departure(station, level, best.percent(), seconds, best.from()));
      }
    }
    return departures;
  }

  private static Arrival faster(@Nullable Arrival one, Arrival other) {
    return one == null || other.seconds() < one.seconds() ? other : one;
  }

  private Optional<TripPlan> finished(List<Departure> departures) {
    Departure best = null;
    for (Departure last : departures) {
      double arrival = last.unplugPercent() - task.shareToEnd(last.station());
      boolean reaches = arrival >= task.reservePercent() - UnplugLevels.SLACK_PERCENT;
      if (reaches && (best == null || last.seconds() < best.seconds())) {
        best = last;
      }
    }
    return Optional.ofNullable(best).map(this::plan);
  }

  private TripPlan plan(Departure last) {
    List<TripPlan.Stop> stops = new ArrayList<>();
    for (Departure at = last; at != null && at.station() > 0; at = at.before()) {
      stops.add(
          new TripPlan.Stop(
              at.station(),
              task.kilometre(at.station()),
              at.arrivalPercent(),
              at.unplugPercent(),
              clock.seconds(at.arrivalPercent(), at.unplugPercent())));
    }
    Collections.reverse(stops);
    double arrival = last.unplugPercent() - task.shareToEnd(last.station());
    return new TripPlan(stops, arrival, last.seconds());
  }

  /**
   * A departure from a station, with the least total time of all stops so far.
   *
   * @param station number of the station; 0 is the start of the trip
   * @param unplugPercent state of charge on leaving, %
   * @param arrivalPercent state of charge on arrival there, %
   * @param seconds time of all stops so far, s
   * @param before the previous departure; null at the start
   */
  private record Departure(
      int station,
      double unplugPercent,
      double arrivalPercent,
      double seconds,
      @Nullable Departure before) {
    static Departure atStart(double percent) {
      return new Departure(0, percent, percent, 0, null);
    }
  }
}
