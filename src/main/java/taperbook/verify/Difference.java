package taperbook.verify;

/**
 * A difference between embedded and recomputed content.
 *
 * @param kind what differs
 * @param place where
 * @param carried the content of the PDF
 * @param recomputed the content that follows from its inputs
 */
public record Difference(Kind kind, String place, String carried, String recomputed) {
  /** What differs. */
  public enum Kind {
    /** An input's content does not match its hash. */
    INPUT,
    /** A number of {@code numbers.json}. */
    NUMBER,
    /** A line of text on a page. */
    TEXT,
    /** An object of the PDF. */
    OBJECT
  }
}
