package taperbook.result;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import taperbook.session.Caveat;

/**
 * One session in a library: a few numbers and a thinned curve. Its size does not depend on the
 * number of readings, so that thousands of rows fit into memory.
 *
 * @param session name of the session
 * @param about the session's vehicle and conditions
 * @param numbers its numbers, with intervals
 * @param curve power in kW over state of charge in %, at most {@link #MAX_POINTS} points, possibly
 *     none
 * @param caveats kinds of caveat of the session and its drive
 */
public record LibraryRow(
    String session, About about, Numbers numbers, Curve curve, Set<Caveat.Kind> caveats) {
  /** Maximum number of points of a row's curve. */
  public static final int MAX_POINTS = 64;

  /** Copies the caveats and checks the length of the curve. */
  public LibraryRow {
    Set<Caveat.Kind> kinds = EnumSet.noneOf(Caveat.Kind.class);
    kinds.addAll(caveats);
    caveats = Collections.unmodifiableSet(kinds);
    if (curve.size() > MAX_POINTS) {
      throw new IllegalArgumentException("the curve has " + curve.size() + " points");
    }
  }

  /**
   * The vehicle and conditions of a session, as the tester recorded them.
   *
   * @param vehicle the car
   * @param date day of the session, ISO 8601, if known
   * @param place location of the station, if known
   * @param preconditioned whether the battery was preconditioned: yes or no, if known
   * @param conditions text of the conditions that sessions must share to be ranked: station,
   *     preconditioning and temperature
   */
  public record About(
      String vehicle,
      Optional<String> date,
      Optional<String> place,
      Optional<String> preconditioned,
      String conditions) {}
}
