package taperbook.prosecheck;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import taperbook.prosecheck.TypedFigure.Verdict;

/** Counts of correct, wrong, and missing verdicts. */
final class Score {
  private final Verdict verdict;
  private final List<String> mistakes = new ArrayList<>();
  private int right;
  private int wrong;
  private int missed;

  private Score(Verdict verdict) {
    this.verdict = verdict;
  }

  /** Scores one verdict on pieces of the corpus; the number must be that of the label. */
  static Score of(Verdict verdict, List<Corpus.Piece> pieces) {
    Score score = new Score(verdict);
    pieces.forEach(score::count);
    return score;
  }

  private void count(Corpus.Piece piece) {
    List<TypedFigure> given =
        FigureCheck.of(InventedCharge.with(piece.text())).figures().stream()
            .filter(f -> f.verdict() == verdict)
            .toList();
    List<Corpus.Label> wanted =
        piece.labels().stream().filter(l -> l.verdict() == verdict).toList();
    for (TypedFigure figure : given) {
      if (wanted.stream().anyMatch(l -> isOf(l, figure, piece.text()))) {
        right++;
      } else {
        wrong++;
        mistakes.add("wrong " + figure.written() + " " + figure.id() + ": " + piece.text());
      }
    }
    for (Corpus.Label label : wanted) {
      if (given.stream().noneMatch(f -> isOf(label, f, piece.text()))) {
        missed++;
        mistakes.add("missed " + label.id() + ": " + piece.text());
      }
    }
  }

  private static boolean isOf(Corpus.Label label, TypedFigure figure, String text) {
    int start = 0;
    for (int line = figure.place().line(); line > InventedCharge.FIRST_LINE; line--) {
      start = text.indexOf('\n', start) + 1;
    }
    int from = start + figure.place().column() - 1;
    int to = from + figure.written().length();
    return figure.id().filter(label.id()::equals).isPresent()
        && from < label.end()
        && label.start() < to;
  }

  double precision() {
    return right / (double) (right + wrong);
  }

  double recall() {
    return right / (double) (right + missed);
  }

  List<String> mistakes() {
    return mistakes;
  }

  /** A row of a table: verdict, right, wrong, missed, precision, recall. */
  String row(String half) {
    return String.format(
        Locale.ROOT,
        "| %s | %s | %d | %d | %d | %.1f %% | %.1f %% |",
        half,
        verdict.name().toLowerCase(Locale.ROOT),
        right,
        wrong,
        missed,
        100 * precision(),
        100 * recall());
  }
}
