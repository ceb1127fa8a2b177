package taperbook.workspace;

import java.util.ArrayList;
import java.util.List;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.SourceLocation;
import taperbook.format.MisreadText;
import taperbook.format.NumberFormatter;
import taperbook.metric.quality.MisreadDetector;
import taperbook.quantity.Unit;
import taperbook.session.Channel;
import taperbook.session.Review.Misread;
import taperbook.session.Session;

/** Checks the readings of a session for consistency and reports those that do not fit. */
final class ReadingReview {
  private static final NumberFormatter WORDING = new NumberFormatter(Unit.KILOMETRE);

  private ReadingReview() {}

  /** Returns the session with its review; refused if a reading is impossible. */
  static Checked<Session> of(Checked<Session> checked) {
    if (checked.value().isEmpty()) {
      return checked;
    }
    Session session = checked.value().get();
    List<Misread> found = MisreadDetector.find(session);
    List<Problem> problems = new ArrayList<>(checked.problems());
    // A decrease that follows from a reported misread needs no second message.
    problems.removeIf(p -> p.code() == ProblemCode.SOC_FALLS && isBlamed(p.place(), found));
    found.forEach(m -> problems.add(problem(m)));
    return Checked.of(session.with(session.review().with(found)), problems);
  }

  private static boolean isBlamed(SourceLocation fall, List<Misread> found) {
    return found.stream()
        .filter(m -> m.channel().filter(c -> c == Channel.SOC).isPresent())
        .anyMatch(
            m -> {
              int lines = fall.line() - m.row().line();
              return m.row().file().equals(fall.file()) && lines >= 0 && lines <= 1;
            });
  }

  private static Problem problem(Misread misread) {
    ProblemCode code =
        misread.isImpossible() ? ProblemCode.READING_IMPOSSIBLE : ProblemCode.READING_DOUBTFUL;
    String again =
        misread.channel().isEmpty()
            ? "look at the film again; correct the time, or write \"confirmed\" into a column"
                + " \"as read\" if the readings are right"
            : "look at the film again; correct it, or write \"confirmed "
                + misread.name()
                + "\" or \"doubtful "
                + misread.name()
                + "\" into a column \"as read\"";
    return new Problem(
        code,
        new SourceLocation(misread.row().file(), misread.row().line(), misread.column()),
        misread.name() + " " + MisreadText.shown(misread, WORDING),
        MisreadText.fitting(misread, WORDING) + ", by the other readings",
        again);
  }
}
