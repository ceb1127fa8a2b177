package taperbook.result;

import java.util.List;
import java.util.Optional;
import taperbook.session.Caveat;
import taperbook.session.RangeTest;
import taperbook.session.Session;

/**
 * All results for one session.
 *
 * @param session the session
 * @param drives the range tests of its vehicle that the report names
 * @param numbers its numbers
 * @param checks its cross-checks
 * @param curves its curves
 * @param caveats its caveats, by kind
 * @param events its events, in order
 */
public record SessionResult(
    Session session,
    Drives drives,
    Numbers numbers,
    List<CrossCheck> checks,
    Curves curves,
    List<Caveat> caveats,
    List<Event> events) {
  public SessionResult {
    checks = List.copyOf(checks);
    caveats = List.copyOf(caveats);
    events = List.copyOf(events);
  }

  /** Returns the same result with more numbers. */
  public SessionResult with(Numbers more) {
    return new SessionResult(session, drives, numbers.plus(more), checks, curves, caveats, events);
  }

  /**
   * Returns the range test that determines the speed that distances are based on, if the report
   * names one.
   */
  public Optional<RangeTest> rangeTest() {
    return drives.first();
  }

  /** Creates the result of a session without events. */
  public SessionResult(
      Session session,
      Optional<RangeTest> rangeTest,
      Numbers numbers,
      List<CrossCheck> checks,
      Curves curves,
      List<Caveat> caveats) {
    this(
        session,
        new Drives(rangeTest.stream().toList()),
        numbers,
        checks,
        curves,
        caveats,
        List.of());
  }
}
