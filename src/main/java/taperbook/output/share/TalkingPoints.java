package taperbook.output.share;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import taperbook.format.SessionNames;
import taperbook.i18n.Texts;
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
                    List.of(Texts.of("caption.plugged_in", soc)),
                    Texts.of(
                        "page.talking_points.plugged_in_at_displayed_charge", full("start_soc")),
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
                    Texts.of(
                        "page.talking_points.power_first_reads_its_peak",
                        full("peak_power"),
                        spoken
                            .full("peak_reached_soc")
                            .map(
                                soc -> Texts.of("page.talking_points.display_shows_of_charge", soc))
                            .orElse("")),
                    List.of("peak_power", "peak_reached_time", "peak_reached_soc")));
  }

  private List<String> peakCaptions(String power) {
    String brief = Texts.of("caption.peak", power);
    return spoken
        .value("peak_reached_soc")
        .map(soc -> List.of(Texts.of("caption.peak_at", power, soc), brief))
        .orElse(List.of(brief));
  }

  private void hold() {
    OptionalDouble from = spoken.amount("peak_hold_time_from");
    OptionalDouble length = spoken.amount("peak_hold_time");
    if (from.isEmpty() || length.isEmpty() || length.getAsDouble() <= 0) {
      return;
    }
    String power = spoken.value("peak_power").orElse(Texts.of("caption.the_peak"));
    String time = spoken.value("peak_hold_time").orElseThrow();
    add(
        OptionalDouble.of(from.getAsDouble() + length.getAsDouble()),
        List.of(Texts.of("mark.held", power, time), Texts.of("caption.held", time)),
        Texts.of(
            "page.talking_points.here_peak_ends_it_was",
            full("peak_hold_time"),
            spoken
                .value("peak_hold_soc_from")
                .flatMap(
                    low ->
                        spoken
                            .value("peak_hold_soc_to")
                            .map(
                                high ->
                                    Texts.of("page.talking_points.from_to_of_charge", low, high)))
                .orElse("")),
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
                    List.of(Texts.of("caption.distance", distance.words(), time)),
                    Texts.of(
                        "page.talking_points.charge_for_another_on_basis",
                        distance.words(),
                        result.plan().style().basis().words(),
                        full(id)),
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
                    List.of(Texts.of("mark.percent_after_time", percent, time)),
                    Texts.of(
                        "page.talking_points.is_reached_after",
                        percent,
                        full(id),
                        sentence(
                            Texts.of("page.talking_points.power_there"), "power_at_soc_" + percent),
                        sentence(
                            Texts.of("page.talking_points.energy_added_by_then"),
                            "energy_to_soc_" + percent)),
                    List.of(id, "power_at_soc_" + percent, "energy_to_soc_" + percent)));
  }

  private String sentence(String beginning, String id) {
    return spoken.full(id).map(text -> beginning + text + ".").orElse("");
  }

  private void window(SocWindow window) {
    String id = "time_soc_" + window.idPart();
    String edges = Texts.of("page.talking_points.to", window.from(), window.to());
    spoken
        .value(id)
        .ifPresent(
            time ->
                add(
                    spoken.secondsAt(window.to()),
                    List.of(Texts.of("mark.window", window.from(), window.to(), time)),
                    Texts.of(
                        "page.talking_points.from_it_took",
                        edges,
                        full(id),
                        sentence(
                            Texts.of("page.talking_points.average_power_over_that_time"),
                            "average_power_" + window.idPart())),
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
                Texts.of("caption.level", other, at),
                Texts.of("caption.level", names.letterOf(pair.other()), at)),
            Texts.of(
                "page.talking_points.at_of_charge_this_curve",
                ofPair.full(id).orElseThrow(),
                other),
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
                  Texts.of(
                      "page.talking_points.session_ends_at_of_charge",
                      full("end_soc"),
                      spoken
                          .full("session_time")
                          .map(t -> Texts.of("page.talking_points.after", t))
                          .orElse(""),
                      sentence(Texts.of("page.talking_points.energy_added"), "energy_added")),
                  List.of("end_soc", "session_time", "energy_added"));
            });
  }

  private List<String> endCaptions(String soc) {
    String brief = Texts.of("caption.end", soc);
    return spoken
        .value("energy_added")
        .map(energy -> List.of(Texts.of("caption.end_with", soc, energy), brief))
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
