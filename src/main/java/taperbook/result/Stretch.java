package taperbook.result;

import java.util.Optional;

/**
 * A range of state of charge over which the order of two power curves is the same. All stretches of
 * a pair, in order, cover the shared window without gap or overlap.
 *
 * @param order which of the two takes more power
 * @param from lower edge, %
 * @param to upper edge, %, above {@code from}
 * @param ids ids of the stretch's numbers, if the order is known
 */
public record Stretch(Order order, double from, double to, Optional<Ids> ids) {
  /** Checks the edges and that an undecided stretch has no numbers. */
  public Stretch {
    if (!(from < to) || (order == Order.UNDECIDED) == ids.isPresent()) {
      throw new IllegalArgumentException("no such stretch: " + order + " " + from + " to " + to);
    }
  }

  /** Which of two sessions takes more power. */
  public enum Order {
    /** The reported session, with certainty. */
    AHEAD,
    /** The compared session, with certainty. */
    BEHIND,
    /** Not decidable from the readings. */
    UNDECIDED
  }

  /**
   * Ids of the numbers of a stretch.
   *
   * @param from its lower edge, %
   * @param to its upper edge, %
   * @param lead mean over state of charge of the reported session's power minus the other's, kW
   * @param gain the other session's time for the stretch minus the reported session's, s
   */
  public record Ids(String from, String to, String lead, String gain) {}
}
