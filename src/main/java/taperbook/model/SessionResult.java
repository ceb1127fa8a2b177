package taperbook.model;

import java.util.List;
import java.util.Optional;

/**
 * All that was measured of one session.
 *
 * @param session the session
 * @param rangeTest the range test of its vehicle, if the report names one
 * @param numbers its numbers
 * @param checks its cross-checks
 * @param curves its curves
 * @param caveats all that a reader must know of it, by kind
 */
public record SessionResult(
    Session session,
    Optional<RangeTest> rangeTest,
    Numbers numbers,
    List<CrossCheck> checks,
    Curves curves,
    List<Caveat> caveats) {
  /** Copies the lists. */
  public SessionResult {
    checks = List.copyOf(checks);
    caveats = List.copyOf(caveats);
  }
}
