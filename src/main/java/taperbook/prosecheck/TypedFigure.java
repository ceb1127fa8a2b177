package taperbook.prosecheck;

import java.util.Optional;
import taperbook.diagnostics.SourceLocation;

/**
 * A figure that the tester typed by hand, with its verdict.
 *
 * @param place where it stands
 * @param written what stands there, with its hedge left out
 * @param verdict what came of holding it against the results
 * @param id the number or fact that it states; empty if it is not traceable
 */
public record TypedFigure(
    SourceLocation place, String written, Verdict verdict, Optional<String> id) {
  /** What came of holding a figure against the results. */
  public enum Verdict {
    /** It agrees with a number or fact, to the digits that it is written with. */
    SUPPORTED,
    /** It disagrees with the only number or fact that can be meant. */
    CONTRADICTED,
    /** It disagrees, and its line is marked as deliberate. */
    DELIBERATE,
    /** It is not clear which number or fact is meant, or none is. */
    NOT_TRACEABLE
  }
}
