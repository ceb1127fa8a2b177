package taperbook.prosecheck;

import java.util.List;
import taperbook.diagnostics.Problem;

/**
 * The result of checking an article's typed figures.
 *
 * @param figures the figures, in order
 * @param problems each contradicted figure, and each mark without effect
 */
public record ArticleFigures(List<TypedFigure> figures, List<Problem> problems) {
  public ArticleFigures {
    figures = List.copyOf(figures);
    problems = List.copyOf(problems);
  }

  /** Returns the number of figures with a verdict. */
  public long count(TypedFigure.Verdict verdict) {
    return figures.stream().filter(f -> f.verdict() == verdict).count();
  }
}
