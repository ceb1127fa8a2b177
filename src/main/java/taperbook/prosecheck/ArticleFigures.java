package taperbook.prosecheck;

import java.util.List;
import taperbook.diagnostics.Problem;

/**
 * What came of an article's typed figures.
 *
 * @param figures the figures, in order
 * @param problems each figure that is contradicted, each mark that nothing needs
 */
public record ArticleFigures(List<TypedFigure> figures, List<Problem> problems) {
  /** Copies the lists. */
  public ArticleFigures {
    figures = List.copyOf(figures);
    problems = List.copyOf(problems);
  }

  /** How many figures have a verdict. */
  public long count(TypedFigure.Verdict verdict) {
    return figures.stream().filter(f -> f.verdict() == verdict).count();
  }
}
