package taperbook.chart.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import taperbook.chart.model.Chart;
import taperbook.chart.model.Credit;
import taperbook.chart.model.FigureText;
import taperbook.chart.model.Heading;
import taperbook.chart.model.Pen;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.Series;
import taperbook.format.SessionNames;
import taperbook.i18n.Joined;
import taperbook.i18n.Texts;
import taperbook.result.PairResult;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;
import taperbook.session.Session;

/**
 * The sessions of a report in order, the reported one first, with their names in charts.
 *
 * @param result the report's result
 * @param members the drawn sessions, at most one per pen
 */
record Lineup(ReportResult result, List<Member> members) {
  Lineup {
    members = List.copyOf(members);
  }

  /**
   * A drawn session.
   *
   * @param result its result
   * @param letter its letter
   * @param label its letter and distinguishing name
   * @param pen how its line is drawn
   * @param texts its formatted numbers
   */
  record Member(SessionResult result, String letter, String label, Pen pen, FigureText texts) {
    /** Returns its letter and name, such as {@code B (first battery revision)}. */
    String named() {
      return letter + " (" + words() + ")";
    }

    /** Returns its distinguishing name, such as {@code first battery revision}. */
    String words() {
      return label.substring(letter.length() + 1);
    }

    /** Returns the session's series from one of its curves. */
    Series series(PlotLine line) {
      return new Series(line, pen, label);
    }
  }

  static Lineup of(ReportResult result) {
    List<SessionResult> sessions = result.sessions();
    SessionNames names = SessionNames.of(sessions.stream().map(SessionResult::session).toList());
    List<Member> members = new ArrayList<>();
    for (int i = 0; i < Math.min(sessions.size(), SessionNames.MOST); i++) {
      SessionResult session = sessions.get(i);
      FigureText texts = new FigureText(result, session.numbers());
      String letter = SessionNames.letter(i);
      members.add(new Member(session, letter, names.label(i), Pen.ofSession(i), texts));
    }
    return new Lineup(result, members);
  }

  /** Returns the pairs whose sessions are both drawn. */
  List<PairResult> pairs() {
    return result.pairs().subList(0, Math.min(result.pairs().size(), members.size() - 1));
  }

  /** Returns the caption of the pair, if there is only one. */
  Optional<PairCaption> onlyPair() {
    return members.size() == 2 && pairs().size() == 1
        ? Optional.of(new PairCaption(result, pairs().get(0), members.get(0), members.get(1)))
        : Optional.empty();
  }

  /** Returns the sessions that have a curve of a kind, each with its line. */
  List<Entry> entries(Function<Member, Optional<PlotLine>> line) {
    return members.stream().flatMap(m -> line.apply(m).map(l -> new Entry(m, l)).stream()).toList();
  }

  /**
   * A session with one of its lines.
   *
   * @param member the session
   * @param line the line
   */
  record Entry(Member member, PlotLine line) {
    Series series() {
      return member.series(line);
    }
  }

  /** Returns the title texts of a chart of all drawn sessions. */
  Heading heading(String finding, String quantity) {
    return heading(finding, quantity, members);
  }

  /** Returns the title texts of a chart of some sessions, the reported one first. */
  Heading heading(String finding, String quantity, List<Member> drawn) {
    List<String> names = drawn.stream().map(Member::label).toList();
    List<Session> sessions = drawn.stream().map(m -> m.result().session()).toList();
    return new Heading(finding, quantity, Credit.of(result, names, sessions));
  }

  /** Returns the mark of the states of charge that all sessions cover, if there are any. */
  Chart.Marks commonMarks() {
    return Chart.Marks.common(
        result
            .common()
            .shared()
            .map(
                s ->
                    new Chart.Window(
                        s.from(), s.to(), List.of(Texts.of("mark.in_common", s.from(), s.to())))));
  }

  /**
   * Returns a number of each session with its uncertainty, or the reason for none; empty if no
   * session has one.
   */
  Optional<String> each(String id) {
    boolean known = members.stream().anyMatch(m -> m.texts().value(id).isPresent());
    List<String> parts = new ArrayList<>();
    for (Member member : members) {
      member.texts().outcome(id).ifPresent(o -> parts.add(member.letter() + " " + o));
    }
    return known ? Optional.of(String.join("; ", parts)) : Optional.empty();
  }

  /** Returns a sentence on omitted sessions, if there are any. */
  Optional<String> leftOut(List<Entry> drawn) {
    List<Member> without = new ArrayList<>(members);
    without.removeAll(drawn.stream().map(Entry::member).toList());
    List<String> parts = new ArrayList<>();
    if (!without.isEmpty()) {
      String letters = Joined.all(without.stream().map(Member::letter).toList());
      parts.add(Texts.of("figure.lineup.not_drawn_for_want_of", letters));
    }
    if (result.sessions().size() > members.size()) {
      parts.add(Texts.of("figure.lineup.only_first_sessions_are_drawn", members.size()));
    }
    return parts.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", parts));
  }
}
