package taperbook.chart.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import taperbook.chart.model.Credit;
import taperbook.chart.model.FigureText;
import taperbook.chart.model.Heading;
import taperbook.chart.model.Pen;
import taperbook.chart.model.PlotLine;
import taperbook.chart.model.Series;
import taperbook.format.SessionNames;
import taperbook.result.PairResult;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;
import taperbook.session.Session;

/**
 * The sessions of a report in order, the reported one first, with what charts call them.
 *
 * @param result the report's result
 * @param members the sessions that are drawn, at most as many as there are pens
 */
record Lineup(ReportResult result, List<Member> members) {
  /** Copies the list. */
  Lineup {
    members = List.copyOf(members);
  }

  /**
   * A session that is drawn.
   *
   * @param result what was measured of it
   * @param letter its letter
   * @param label its letter and what tells it from the others
   * @param pen how its line is drawn
   * @param said its numbers in words
   */
  record Member(SessionResult result, String letter, String label, Pen pen, FigureText said) {
    /** Its letter and what it stands for, such as {@code B (first battery revision)}. */
    String named() {
      return letter + " (" + words() + ")";
    }

    /** What tells it from the others, such as {@code first battery revision}. */
    String words() {
      return label.substring(letter.length() + 1);
    }

    /** The session's line from one of its curves. */
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
      FigureText said = new FigureText(result, session.numbers());
      String letter = SessionNames.letter(i);
      members.add(new Member(session, letter, names.label(i), Pen.ofSession(i), said));
    }
    return new Lineup(result, members);
  }

  /** The pairs whose sessions are both drawn. */
  List<PairResult> pairs() {
    return result.pairs().subList(0, Math.min(result.pairs().size(), members.size() - 1));
  }

  /** Words on the pair, if there is only one. */
  Optional<PairCaption> onlyPair() {
    return members.size() == 2 && pairs().size() == 1
        ? Optional.of(
            new PairCaption(
                result, pairs().get(0), members.get(0).letter(), members.get(1).letter()))
        : Optional.empty();
  }

  /** The sessions that have a curve of a kind, each with its line. */
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

  /** The words around a chart of all that is drawn. */
  Heading heading(String finding, String quantity) {
    return heading(finding, quantity, members);
  }

  /** The words around a chart of some sessions, the reported one first. */
  Heading heading(String finding, String quantity, List<Member> drawn) {
    List<String> names = drawn.stream().map(Member::label).toList();
    List<Session> sessions = drawn.stream().map(m -> m.result().session()).toList();
    return new Heading(finding, quantity, Credit.of(result, names, sessions));
  }

  /** A sentence on what is not drawn, if that is anything. */
  Optional<String> leftOut(List<Entry> drawn) {
    List<Member> without = new ArrayList<>(members);
    without.removeAll(drawn.stream().map(Entry::member).toList());
    List<String> parts = new ArrayList<>();
    if (!without.isEmpty()) {
      String letters = SessionPhrases.listed(without.stream().map(Member::letter).toList());
      parts.add("Not drawn for want of readings: " + letters + ".");
    }
    if (result.sessions().size() > members.size()) {
      parts.add("Only the first " + members.size() + " sessions are drawn.");
    }
    return parts.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", parts));
  }
}
