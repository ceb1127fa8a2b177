package taperbook.metric;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import taperbook.metric.recording.Recording;
import taperbook.metric.session.TaperMetrics;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.result.CommonGround;
import taperbook.result.ReportNumber;
import taperbook.session.Trace;

/** Finds the range of state of charge and the energy that all sessions of a report cover. */
final class CommonGroundFinder {
  /** Minimum width of the shared window after the warm-up climbs are excluded, %. */
  private static final int LEAST_WARMED_PERCENT = 5;

  private static final int ROUND_KILOWATT_HOURS = 5;

  private final List<SessionMetrics> sessions;

  private CommonGroundFinder(List<SessionMetrics> sessions) {
    this.sessions = List.copyOf(sessions);
  }

  /**
   * Returns the common ground of two or more sessions; empty for a single session.
   *
   * @param published common ground of an earlier version, which is kept if the readings cover it
   */
  static CommonGround of(List<SessionMetrics> sessions, Optional<CommonGround> published) {
    if (sessions.size() < 2) {
      return CommonGround.NONE;
    }
    CommonGroundFinder search = new CommonGroundFinder(sessions);
    CommonGround current = search.find();
    return published.filter(search::covers).map(p -> kept(p, current)).orElse(current);
  }

  private static CommonGround kept(CommonGround published, CommonGround current) {
    return new CommonGround(
        published.shared(),
        published.warmed(),
        published.energyKilowattHours(),
        published.frozen().map(f -> new CommonGround.Frozen(f.since(), current.windows())));
  }

  private CommonGround find() {
    Optional<SocWindow> shared = shared();
    return new CommonGround(
        shared, shared.flatMap(this::warmed), shared.map(this::energy).orElse(OptionalInt.empty()));
  }

  /** Returns true if every session covers the whole common ground. */
  private boolean covers(CommonGround ground) {
    List<Trace> traces = traces();
    if (traces.size() < sessions.size() || ground.shared().isEmpty()) {
      return false;
    }
    boolean charge =
        ground.windows().stream()
            .allMatch(
                w ->
                    traces.stream()
                        .allMatch(t -> firstShown(t) <= w.from() && w.to() <= t.lastValue()));
    return charge
        && ground.energyKilowattHours().stream()
            .allMatch(
                e ->
                    sessions.stream()
                        .allMatch(
                            s ->
                                leastAdded(s.recording(), ground.shared().get().from())
                                    .anyMatch(least -> least >= e)));
  }

  private List<Trace> traces() {
    return sessions.stream().flatMap(s -> s.recording().soc().stream()).toList();
  }

  private Optional<SocWindow> shared() {
    List<Trace> traces = traces();
    if (traces.size() < sessions.size()) {
      return Optional.empty();
    }
    double from = traces.stream().mapToDouble(CommonGroundFinder::firstShown).max().orElseThrow();
    double to = traces.stream().mapToDouble(Trace::lastValue).min().orElseThrow();
    return window((int) Math.ceil(from), (int) Math.floor(to), 1);
  }

  /**
   * Returns the first charge that the display starts to show within the session, %. The time at
   * which the previous step appeared is not known.
   */
  private static double firstShown(Trace soc) {
    return soc.firstValue() + 2 * soc.halfStep();
  }

  private static Optional<SocWindow> window(int from, int to, int least) {
    return to - from >= least ? Optional.of(new SocWindow(from, to)) : Optional.empty();
  }

  /** Returns the part of the shared window in which no session is still in its warm-up climb. */
  private Optional<SocWindow> warmed(SocWindow shared) {
    double from = shared.from();
    for (SessionMetrics session : sessions) {
      ReportNumber end = session.numbers().get("warm_up_end_soc");
      Optional<Estimate> climbed = end.estimate();
      boolean known =
          climbed.isPresent() || end.reason().equals(Optional.of(TaperMetrics.NO_CLIMB));
      if (!known) {
        return Optional.empty();
      }
      from = Math.max(from, climbed.map(e -> e.bounds().high()).orElse(from));
    }
    int whole = (int) Math.ceil(from);
    return whole > shared.from()
        ? window(whole, shared.to(), LEAST_WARMED_PERCENT)
        : Optional.empty();
  }

  /**
   * Returns the largest round energy that every session certainly added above the lower window
   * edge.
   */
  private OptionalInt energy(SocWindow shared) {
    List<Double> least =
        sessions.stream().flatMap(s -> leastAdded(s.recording(), shared.from())).toList();
    if (least.size() < sessions.size()) {
      return OptionalInt.empty();
    }
    int whole = (int) Math.floor(least.stream().mapToDouble(e -> e).min().orElse(0));
    int round = whole / ROUND_KILOWATT_HOURS * ROUND_KILOWATT_HOURS;
    int energy = round > 0 ? round : whole;
    return energy > 0 ? OptionalInt.of(energy) : OptionalInt.empty();
  }

  private static Stream<Double> leastAdded(Recording recording, int from) {
    return recording.energy().value().isEmpty()
        ? Stream.empty()
        : recording
            .courses()
            .estimate(
                d ->
                    d.course().energyAt(d.course().lastSecond())
                        - d.course().energyAt(d.course().timeOfCharge(from)))
            .map(e -> e.bounds().low())
            .stream();
  }
}
