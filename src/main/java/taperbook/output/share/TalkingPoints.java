package taperbook.output.share;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
    add(
        Optional.of(0.0),
        List.of(Texts.of("caption.plugged_in", value("start_soc"))),
        Texts.of("page.talking_points.plugged_in_at_displayed_charge", full("start_soc")),
        "start_soc");
  }

  private void peak() {
    String power = value("peak_power");
    String soc = value("peak_reached_soc");
    String brief = Texts.of("caption.peak", power);
    add(
        seconds("peak_reached_time"),
        soc.isEmpty() ? List.of(brief) : List.of(Texts.of("caption.peak_at", power, soc), brief),
        Texts.of(
            "page.talking_points.power_first_reads_its_peak",
            full("peak_power"),
            part("page.talking_points.display_shows_of_charge", "peak_reached_soc")),
        "peak_power",
        "peak_reached_time",
        "peak_reached_soc");
  }

  private void hold() {
    Optional<Double> length = seconds("peak_hold_time").filter(s -> s > 0);
    String power =
        numbers.measured("peak_power").map(formatter::value).orElse(Texts.of("caption.the_peak"));
    String time = value("peak_hold_time");
    String from = value("peak_hold_soc_from");
    String to = value("peak_hold_soc_to");
    add(
        seconds("peak_hold_time_from").flatMap(start -> length.map(s -> start + s)),
        List.of(Texts.of("mark.held", power, time), Texts.of("caption.held", time)),
        Texts.of(
            "page.talking_points.here_peak_ends_it_was",
            full("peak_hold_time"),
            from.isEmpty() || to.isEmpty()
                ? ""
                : Texts.of("page.talking_points.from_to_of_charge", from, to)),
        "peak_hold_time_from",
        "peak_hold_time");
  }

  private void distance(WantedDistance distance) {
    String id = result.plan().timeToAddId(distance);
    add(
        seconds(id),
        List.of(Texts.of("caption.distance", distance.words(), value(id))),
        Texts.of(
            "page.talking_points.charge_for_another_on_basis",
            distance.words(),
            result.plan().style().basis().words(),
            full(id)),
        id);
  }

  private void mark(int percent) {
    String id = "time_to_soc_" + percent;
    String power = "power_at_soc_" + percent;
    String energy = "energy_to_soc_" + percent;
    add(
        seconds(id),
        List.of(Texts.of("mark.percent_after_time", percent, value(id))),
        Texts.of(
            "page.talking_points.is_reached_after",
            percent,
            full(id),
            sentence(Texts.of("page.talking_points.power_there"), power),
            sentence(Texts.of("page.talking_points.energy_added_by_then"), energy)),
        id,
        power,
        energy);
  }

  private void window(SocWindow window) {
    String id = "time_soc_" + window.idPart();
    String power = "average_power_" + window.idPart();
    add(
        secondsAt(window.to()),
        List.of(Texts.of("mark.window", window.from(), window.to(), value(id))),
        Texts.of(
            "page.talking_points.from_it_took",
            Texts.of("page.talking_points.to", window.from(), window.to()),
            full(id),
            sentence(Texts.of("page.talking_points.average_power_over_that_time"), power)),
        id,
        power);
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
        soc.id());
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
    String soc = value("end_soc");
    String energy = value("energy_added");
    String brief = Texts.of("caption.end", soc);
    add(
        seconds("session_time"),
        energy.isEmpty()
            ? List.of(brief)
            : List.of(Texts.of("caption.end_with", soc, energy), brief),
        Texts.of(
            "page.talking_points.session_ends_at_of_charge",
            full("end_soc"),
            part("page.talking_points.after", "session_time"),
            sentence(Texts.of("page.talking_points.energy_added"), "energy_added")),
        "end_soc",
        "session_time",
        "energy_added");
  }

  private Optional<Double> seconds(String id) {
    return numbers.estimate(id).map(Estimate::value);
  }

  /** Returns the value, or an empty text. */
  private String value(String id) {
    return numbers.measured(id).map(formatter::value).orElse("");
  }

  /** Returns the value with its uncertainty, or an empty text. */
  private String full(String id) {
    return numbers.measured(id).map(formatter::outcome).orElse("");
  }

  private String part(String key, String id) {
    return full(id).isEmpty() ? "" : Texts.of(key, full(id));
  }

  private String sentence(String beginning, String id) {
    return full(id).isEmpty() ? "" : beginning + full(id) + ".";
  }

  /** Adds a point, unless its time is unknown or the first of its numbers was not measured. */
  private void add(Optional<Double> seconds, List<String> captions, String words, String... ids) {
    if (seconds.isPresent() && isMeasured(ids[0])) {
      points.add(
          new TalkingPoint(
              Math.max(0, seconds.get()),
              TalkingPoint.fitting(captions),
              words.replace('\u00a0', ' '),
              Stream.of(ids).filter(this::isMeasured).toList()));
    }
  }

  private boolean isMeasured(String id) {
    return numbers.estimate(id).isPresent()
        || result.pairs().stream().anyMatch(p -> p.numbers().estimate(id).isPresent());
  }
}
