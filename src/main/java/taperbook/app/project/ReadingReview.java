package taperbook.app.project;

import java.util.ArrayList;
import java.util.List;
import taperbook.measure.misread.MisreadSearch;
import taperbook.model.Channel;
import taperbook.model.Review.Misread;
import taperbook.model.Session;
import taperbook.model.Unit;
import taperbook.problem.Checked;
import taperbook.problem.Problem;
import taperbook.problem.ProblemCode;
import taperbook.problem.SourcePlace;
import taperbook.words.MisreadWords;
import taperbook.words.Wording;

/** Holds the readings of a session against each other, and makes problems of those that misfit. */
final class ReadingReview {
  private static final Wording WORDING = new Wording(Unit.KILOMETRE);

  private ReadingReview() {}

  /** The session with what was found; refused if a reading is impossible. */
  static Checked<Session> of(Checked<Session> checked) {
    if (checked.value().isEmpty()) {
      return checked;
    }
    Session session = checked.value().get();
    List<Misread> found = MisreadSearch.find(session);
    List<Problem> problems = new ArrayList<>(checked.problems());
    // A fall follows from a reading that is blamed: one message is enough.
    problems.removeIf(p -> p.code() == ProblemCode.SOC_FALLS && isBlamed(p.place(), found));
    found.forEach(m -> problems.add(problem(m)));
    return Checked.of(session.with(session.review().with(found)), problems);
  }

  private static boolean isBlamed(SourcePlace fall, List<Misread> found) {
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
        new SourcePlace(misread.row().file(), misread.row().line(), misread.column()),
        misread.name() + " " + MisreadWords.shown(misread, WORDING),
        MisreadWords.fitting(misread, WORDING) + ", by the other readings",
        again);
  }
}
