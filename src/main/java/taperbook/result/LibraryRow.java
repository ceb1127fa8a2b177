package taperbook.result;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import taperbook.session.Caveat;

/**
 * One session in a library: a few numbers and a thinned curve, and nothing that grows with the
 * number of its readings, so that thousands of rows fit into memory.
 *
 * @param session name of the session
 * @param about what it is of
 * @param numbers its numbers, with intervals
 * @param curve power in kW over state of charge in %, at most {@link #MOST_POINTS} points, perhaps
 *     none
 * @param caveats what kinds of caveat the session and its drive carry
 */
public record LibraryRow(
    String session, About about, Numbers numbers, Curve curve, Set<Caveat.Kind> caveats) {
  /** Most points of a row's curve. */
  public static final int MOST_POINTS = 64;

  /** Copies the caveats and checks the length of the curve. */
  public LibraryRow {
    Set<Caveat.Kind> kinds = EnumSet.noneOf(Caveat.Kind.class);
    kinds.addAll(caveats);
    caveats = Collections.unmodifiableSet(kinds);
    if (curve.size() > MOST_POINTS) {
      throw new IllegalArgumentException("the curve has " + curve.size() + " points");
    }
  }

  /**
   * What a session is of, as the tester wrote it.
   *
   * @param vehicle the car
   * @param date day of the session, ISO 8601, if known
   * @param place where the station stands, if known
   * @param preconditioned whether the battery was made ready: yes or no, if known
   * @param conditions what sessions must have in common to be ranked: station, preconditioning and
   *     temperature, in words
   */
  public record About(
      String vehicle,
      Optional<String> date,
      Optional<String> place,
      Optional<String> preconditioned,
      String conditions) {}
}
