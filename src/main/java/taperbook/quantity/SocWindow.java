package taperbook.quantity;

/**
 * A window of state of charge.
 *
 * @param from lower edge, whole %, 0 to 99
 * @param to upper edge, whole %, above {@code from}, at most 100
 */
public record SocWindow(int from, int to) {
  /** Checks the edges. */
  public SocWindow {
    if (!(0 <= from && from < to && to <= 100)) {
      throw new IllegalArgumentException("no such window: " + from + " to " + to);
    }
  }

  /** Returns the window's part of a number's id, such as {@code 10_80}. */
  public String idPart() {
    return from + "_" + to;
  }
}
