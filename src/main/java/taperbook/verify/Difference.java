package taperbook.verify;

/**
 * A place where what is carried and what is recomputed are not the same.
 *
 * @param kind what differs
 * @param place where
 * @param carried what the PDF says
 * @param recomputed what follows from its inputs
 */
public record Difference(Kind kind, String place, String carried, String recomputed) {
  /** What differs. */
  public enum Kind {
    /** An input's content is not what its hash says. */
    INPUT,
    /** A number of {@code numbers.json}. */
    NUMBER,
    /** A line of text on a page. */
    TEXT,
    /** An object of the PDF. */
    OBJECT
  }
}
