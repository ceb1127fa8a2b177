package taperbook.output.share;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import taperbook.format.NumberFormatter;
import taperbook.format.SessionNames;
import taperbook.i18n.Texts;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.quantity.WantedDistance;
import taperbook.result.Curve;
import taperbook.result.Numbers;
import taperbook.result.PairResult;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;
import taperbook.session.Session;

/** Generates the talking points of a session, in time order. Withheld numbers give none. */
final class TalkingPoints {
  private final ReportResult result;
  private final Numbers numbers;
  private final NumberFormatter formatter;
  private final List<TalkingPoint> points = new ArrayList<>();

  private TalkingPoints(ReportResult result) {
    this.result = result;
    this.numbers = result.main().numbers();
    this.formatter = new NumberFormatter(result.plan().style());
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
    value("start_soc")
        .ifPresent(
            soc ->
                add(
                    Optional.of(0.0),
                    List.of(Texts.of("caption.plugged_in", soc)),
                    Texts.of(
                        "page.talking_points.plugged_in_at_displayed_charge", known("start_soc")),
                    List.of("start_soc")));
  }

  private void peak() {
    value("peak_power")
        .ifPresent(
            power ->
                add(
                    amount("peak_reached_time"),
                    peakCaptions(power),
                    Texts.of(
                        "page.talking_points.power_first_reads_its_peak",
                        known("peak_power"),
                        full("peak_reached_soc")
                            .map(
                                soc -> Texts.of("page.talking_points.display_shows_of_charge", soc))
                            .orElse("")),
                    List.of("peak_power", "peak_reached_time", "peak_reached_soc")));
  }

  private List<String> peakCaptions(String power) {
    String brief = Texts.of("caption.peak", power);
    return value("peak_reached_soc")
        .map(soc -> List.of(Texts.of("caption.peak_at", power, soc), brief))
        .orElse(List.of(brief));
  }

  private void hold() {
    Optional<Double> from = amount("peak_hold_time_from");
    Optional<Double> length = amount("peak_hold_time");
    if (from.isEmpty() || length.isEmpty() || length.get() <= 0) {
      return;
    }
    String power = value("peak_power").orElse(Texts.of("caption.the_peak"));
    String time = value("peak_hold_time").orElseThrow();
    add(
        Optional.of(from.get() + length.get()),
        List.of(Texts.of("mark.held", power, time), Texts.of("caption.held", time)),
        Texts.of(
            "page.talking_points.here_peak_ends_it_was",
            known("peak_hold_time"),
            value("peak_hold_soc_from")
                .flatMap(
                    low ->
                        value("peak_hold_soc_to")
                            .map(
                                high ->
                                    Texts.of("page.talking_points.from_to_of_charge", low, high)))
                .orElse("")),
        List.of("peak_hold_time_from", "peak_hold_time"));
  }

  private void distance(WantedDistance distance) {
    String id = result.plan().timeToAddId(distance);
    value(id)
        .ifPresent(
            time ->
                add(
                    amount(id),
                    List.of(Texts.of("caption.distance", distance.words(), time)),
                    Texts.of(
                        "page.talking_points.charge_for_another_on_basis",
                        distance.words(),
                        result.plan().style().basis().words(),
                        known(id)),
                    List.of(id)));
  }

  private void mark(int percent) {
    String id = "time_to_soc_" + percent;
    value(id)
        .ifPresent(
            time ->
                add(
                    amount(id),
                    List.of(Texts.of("mark.percent_after_time", percent, time)),
                    Texts.of(
                        "page.talking_points.is_reached_after",
                        percent,
                        known(id),
                        sentence(
                            Texts.of("page.talking_points.power_there"), "power_at_soc_" + percent),
                        sentence(
                            Texts.of("page.talking_points.energy_added_by_then"),
                            "energy_to_soc_" + percent)),
                    List.of(id, "power_at_soc_" + percent, "energy_to_soc_" + percent)));
  }

  private String sentence(String beginning, String id) {
    return full(id).map(text -> beginning + text + ".").orElse("");
  }

  private void window(SocWindow window) {
    String id = "time_soc_" + window.idPart();
    String edges = Texts.of("page.talking_points.to", window.from(), window.to());
    value(id)
        .ifPresent(
            time ->
                add(
                    secondsAt(window.to()),
                    List.of(Texts.of("mark.window", window.from(), window.to(), time)),
                    Texts.of(
                        "page.talking_points.from_it_took",
                        edges,
                        known(id),
                        sentence(
                            Texts.of("page.talking_points.average_power_over_that_time"),
                            "average_power_" + window.idPart())),
                    List.of(id, "average_power_" + window.idPart())));
  }

  private void crossings(PairResult pair) {
    List<Session> sessions = result.sessions().stream().map(SessionResult::session).toList();
    SessionNames names = SessionNames.of(sessions);
    String other = names.words(sessions.indexOf(session(sessions, pair.other())));
    for (String id : pair.crossings()) {
      pair.numbers().measured(id).ifPresent(n -> crossing(n, other, names.letterOf(pair.other())));
    }
  }

  private void crossing(ReportNumber soc, String other, String letter) {
    String at = formatter.value(soc);
    add(
        secondsAt(soc.estimate().orElseThrow().value()),
        List.of(Texts.of("caption.level", other, at), Texts.of("caption.level", letter, at)),
        Texts.of("page.talking_points.at_of_charge_this_curve", formatter.outcome(soc), other),
        List.of(soc.id()));
  }

  /** Returns the time since plugging in, s, at which the displayed charge first reaches a level. */
  private Optional<Double> secondsAt(double percent) {
    return result.main().curves().socOverTime().flatMap(curve -> secondsAt(curve, percent));
  }

  private static Optional<Double> secondsAt(Curve curve, double percent) {
    for (int i = 0; i < curve.size(); i++) {
      if (curve.y(i) >= percent) {
        return Optional.of(i == 0 ? curve.x(0) : between(curve, i, percent));
      }
    }
    return Optional.empty();
  }

  private static double between(Curve curve, int i, double percent) {
    double share = (percent - curve.y(i - 1)) / (curve.y(i) - curve.y(i - 1));
    return curve.x(i - 1) + share * (curve.x(i) - curve.x(i - 1));
  }

  private static Session session(List<Session> sessions, String name) {
    return sessions.stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
  }

  private void end() {
    value("end_soc")
        .ifPresent(
            soc ->
                add(
                    amount("session_time"),
                    endCaptions(soc),
                    Texts.of(
                        "page.talking_points.session_ends_at_of_charge",
                        known("end_soc"),
                        full("session_time")
                            .map(t -> Texts.of("page.talking_points.after", t))
                            .orElse(""),
                        sentence(Texts.of("page.talking_points.energy_added"), "energy_added")),
                    List.of("end_soc", "session_time", "energy_added")));
  }

  private List<String> endCaptions(String soc) {
    String brief = Texts.of("caption.end", soc);
    return value("energy_added")
        .map(energy -> List.of(Texts.of("caption.end_with", soc, energy), brief))
        .orElse(List.of(brief));
  }

  private Optional<Double> amount(String id) {
    return numbers.estimate(id).map(Estimate::value);
  }

  private Optional<String> value(String id) {
    return numbers.measured(id).map(formatter::value);
  }

  /** Returns the value with its uncertainty. */
  private Optional<String> full(String id) {
    return numbers.measured(id).map(formatter::outcome);
  }

  private String known(String id) {
    return full(id).orElseThrow();
  }

  /** Adds a point, unless its time is unknown. */
  private void add(
      Optional<Double> seconds, List<String> captions, String words, List<String> ids) {
    if (seconds.isPresent()) {
      points.add(
          new TalkingPoint(
              Math.max(0, seconds.get()),
              TalkingPoint.fitting(captions),
              words.replace('\u00a0', ' '),
              ids.stream().filter(this::isMeasured).toList()));
    }
  }

  private boolean isMeasured(String id) {
    return numbers.estimate(id).isPresent()
        || result.pairs().stream().anyMatch(p -> p.numbers().estimate(id).isPresent());
  }
}
