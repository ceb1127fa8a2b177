package taperbook.chart.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Axis;
import taperbook.chart.model.FigureText;
import taperbook.chart.plots.Lineup.Member;
import taperbook.i18n.Joined;
import taperbook.i18n.Texts;

/** Phrases about several sessions. */
final class SessionPhrases {
  private SessionPhrases() {}

  /** Joins a list: {@code a}, {@code a and b}, {@code a, b and c}. */
  static String listed(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : Joined.and(List.of(String.join(", ", words.subList(0, last)), words.get(last)));
  }

  /** Describes an axis with its range. */
  static String range(String what, Axis axis) {
    return Texts.of("figure.session_phrases.from_to", what, whole(axis.min()), whole(axis.max()));
  }

  /** Truncates an amount to a tenth, or to a whole number if it is ten or more. */
  private static String whole(double amount) {
    double step = Math.abs(amount) < 10 ? 0.1 : 1;
    double cut = Math.signum(amount) * Math.floor(Math.abs(amount) / step + 1e-9) * step;
    return FigureText.plain(cut);
  }

  /**
   * Returns a number of each session with its uncertainty, or the reason for none; empty if no
   * session has one.
   */
  static Optional<String> each(List<Member> members, String id) {
    boolean known = members.stream().anyMatch(m -> m.texts().value(id).isPresent());
    List<String> parts = new ArrayList<>();
    for (Member member : members) {
      member.texts().outcome(id).ifPresent(o -> parts.add(member.letter() + " " + o));
    }
    return known ? Optional.of(String.join("; ", parts)) : Optional.empty();
  }
}
