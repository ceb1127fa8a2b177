package taperbook.prosecheck;

import java.util.Optional;
import taperbook.diagnostics.SourceLocation;

/**
 * A figure that the tester typed by hand, with its verdict.
 *
 * @param place its location
 * @param written its text, without the hedge
 * @param verdict the result of comparing it with the results
 * @param id the number or fact that it states; empty if it is not traceable
 */
public record TypedFigure(
    SourceLocation place, String written, Verdict verdict, Optional<String> id) {
  /** Results of comparing a figure with the results. */
  public enum Verdict {
    /** Agrees with a number or fact, within the digits of its written form. */
    SUPPORTED,
    /** Disagrees with the only number or fact that can be meant. */
    CONTRADICTED,
    /** Disagrees, and its line is marked as deliberate. */
    DELIBERATE,
    /** It is not clear which number or fact is meant, if any. */
    NOT_TRACEABLE
  }
}
