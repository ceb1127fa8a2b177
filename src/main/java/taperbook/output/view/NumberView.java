package taperbook.output.view;

import java.util.List;
import java.util.Optional;

/**
 * A number.
 *
 * @param present false for the placeholder of a number that the session does not have
 * @param other in the other unit of distance, if that differs
 * @param withheld the reason, or empty
 */
public record NumberView(
    String id,
    String anchor,
    String label,
    boolean present,
    boolean measured,
    @Unwrapped Amount amount,
    @Unwrapped Origin origin,
    List<CaveatMarks.Mark> marks,
    List<CaveatMarks.Item> cautions,
    Optional<Plain> other,
    String withheld) {
  /** The value and interval of a number in several forms. */
  public record Amount(
      String value,
      String range,
      String between,
      String spread,
      boolean exact,
      boolean bounds,
      String coverage) {}

  /** What a number is computed from. */
  public record Origin(String basis, String session, List<String> rows, String method) {}

  /** A value and its interval. */
  public record Plain(String value, String range) {}
}
