package taperbook.output.share;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import taperbook.format.Labels;
import taperbook.format.SessionNames;
import taperbook.plan.ReportPlan;
import taperbook.quantity.SocWindow;
import taperbook.quantity.WantedDistance;
import taperbook.result.PairResult;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;
import taperbook.session.Session;

/** Generates the talking points of a session, in time order. Withheld numbers give none. */
final class TalkingPoints {
  private final ReportResult result;
  private final SpokenNumbers spoken;
  private final List<TalkingPoint> points = new ArrayList<>();

  private TalkingPoints(ReportResult result) {
    this.result = result;
    this.spoken = new SpokenNumbers(result, result.main().numbers());
  }

  /**
   * Returns all points; simultaneous ones in the order peak, distances, marks, windows, crossings.
   */
  static List<TalkingPoint> of(ReportResult result) {
    TalkingPoints all = new TalkingPoints(result);
    all.start();
    all.peak();
    all.hold();
    ReportPlan.Wishes wishes = result.plan().wishes();
    wishes.distances().forEach(all::distance);
    wishes.socMarks().forEach(all::mark);
    wishes.windows().forEach(all::window);
    result.pairs().forEach(all::crossings);
    all.end();
    all.points.sort(Comparator.comparingDouble(p -> Math.round(p.seconds())));
    return List.copyOf(all.points);
  }

  private void start() {
    spoken
        .value("start_soc")
        .ifPresent(
            soc ->
                add(
                    OptionalDouble.of(0),
                    List.of(Labels.of("caption.plugged_in", soc)),
                    "Plugged in at a displayed charge of " + full("start_soc") + ".",
                    List.of("start_soc")));
  }

  private void peak() {
    spoken
        .value("peak_power")
        .ifPresent(
            power ->
                add(
                    spoken.amount("peak_reached_time"),
                    peakCaptions(power),
                    "The power first reads its peak of "
                        + full("peak_power")
                        + spoken
                            .full("peak_reached_soc")
                            .map(soc -> "; the display shows " + soc + " of charge")
                            .orElse("")
                        + ".",
                    List.of("peak_power", "peak_reached_time", "peak_reached_soc")));
  }

  private List<String> peakCaptions(String power) {
    String brief = Labels.of("caption.peak", power);
    return spoken
        .value("peak_reached_soc")
        .map(soc -> List.of(Labels.of("caption.peak_at", power, soc), brief))
        .orElse(List.of(brief));
  }

  private void hold() {
    OptionalDouble from = spoken.amount("peak_hold_time_from");
    OptionalDouble length = spoken.amount("peak_hold_time");
    if (from.isEmpty() || length.isEmpty() || length.getAsDouble() <= 0) {
      return;
    }
    String power = spoken.value("peak_power").orElse(Labels.of("caption.the_peak"));
    String time = spoken.value("peak_hold_time").orElseThrow();
    add(
        OptionalDouble.of(from.getAsDouble() + length.getAsDouble()),
        List.of(Labels.of("mark.held", power, time), Labels.of("caption.held", time)),
        "Here the peak ends: it was held for "
            + full("peak_hold_time")
            + ", within 2 % or one step of the display"
            + spoken
                .value("peak_hold_soc_from")
                .flatMap(
                    low ->
                        spoken
                            .value("peak_hold_soc_to")
                            .map(high -> ", from " + low + " to " + high + " of charge"))
                .orElse("")
            + ".",
        List.of("peak_hold_time_from", "peak_hold_time"));
  }

  private void distance(WantedDistance distance) {
    String id = result.plan().timeToAddId(distance);
    spoken
        .value(id)
        .ifPresent(
            time ->
                add(
                    spoken.amount(id),
                    List.of(Labels.of("caption.distance", distance.words(), time)),
                    "Charge for another "
                        + distance.words()
                        + ", on the "
                        + result.plan().style().basis().words()
                        + " basis: "
                        + full(id)
                        + ".",
                    List.of(id)));
  }

  private void mark(int percent) {
    String id = "time_to_soc_" + percent;
    spoken
        .value(id)
        .ifPresent(
            time ->
                add(
                    spoken.amount(id),
                    List.of(Labels.of("mark.percent_after_time", percent, time)),
                    percent
                        + " % is reached after "
                        + full(id)
                        + "."
                        + sentence(" The power there: ", "power_at_soc_" + percent)
                        + sentence(" Energy added by then: ", "energy_to_soc_" + percent),
                    List.of(id, "power_at_soc_" + percent, "energy_to_soc_" + percent)));
  }

  private String sentence(String beginning, String id) {
    return spoken.full(id).map(text -> beginning + text + ".").orElse("");
  }

  private void window(SocWindow window) {
    String id = "time_soc_" + window.idPart();
    String edges = window.from() + " % to " + window.to() + " %";
    spoken
        .value(id)
        .ifPresent(
            time ->
                add(
                    spoken.secondsAt(window.to()),
                    List.of(Labels.of("mark.window", window.from(), window.to(), time)),
                    "From "
                        + edges
                        + " it took "
                        + full(id)
                        + "."
                        + sentence(
                            " The average power over that time: ",
                            "average_power_" + window.idPart()),
                    List.of(id, "average_power_" + window.idPart())));
  }

  private void crossings(PairResult pair) {
    List<Session> sessions = result.sessions().stream().map(SessionResult::session).toList();
    SessionNames names = SessionNames.of(sessions);
    String other = names.words(sessions.indexOf(session(sessions, pair.other())));
    SpokenNumbers ofPair = new SpokenNumbers(result, pair.numbers());
    for (String id : pair.crossings()) {
      OptionalDouble soc = ofPair.amount(id);
      if (soc.isPresent()) {
        String at = ofPair.value(id).orElseThrow();
        add(
            spoken.secondsAt(soc.getAsDouble()),
            List.of(
                Labels.of("caption.level", other, at),
                Labels.of("caption.level", names.letterOf(pair.other()), at)),
            "At "
                + ofPair.full(id).orElseThrow()
                + " of charge this curve crosses that of "
                + other
                + ".",
            List.of(id));
      }
    }
  }

  private static Session session(List<Session> sessions, String name) {
    return sessions.stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
  }

  private void end() {
    spoken
        .value("end_soc")
        .ifPresent(
            soc -> {
              add(
                  spoken.amount("session_time"),
                  endCaptions(soc),
                  "The session ends at "
                      + full("end_soc")
                      + " of charge"
                      + spoken.full("session_time").map(t -> ", after " + t).orElse("")
                      + "."
                      + sentence(" Energy added: ", "energy_added"),
                  List.of("end_soc", "session_time", "energy_added"));
            });
  }

  private List<String> endCaptions(String soc) {
    String brief = Labels.of("caption.end", soc);
    return spoken
        .value("energy_added")
        .map(energy -> List.of(Labels.of("caption.end_with", soc, energy), brief))
        .orElse(List.of(brief));
  }

  private String full(String id) {
    return spoken.full(id).orElseThrow();
  }

  /** Adds a point, unless its time is unknown. */
  private void add(OptionalDouble seconds, List<String> captions, String words, List<String> ids) {
    if (seconds.isPresent()) {
      points.add(
          new TalkingPoint(
              Math.max(0, seconds.getAsDouble()),
              TalkingPoint.fitting(captions),
              words.replace('\u00a0', ' '),
              ids.stream().filter(id -> known(id)).toList()));
    }
  }

  private boolean known(String id) {
    return spoken.value(id).isPresent()
        || result.pairs().stream().anyMatch(p -> p.numbers().estimate(id).isPresent());
  }
}
