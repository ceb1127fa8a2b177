package taperbook.result;

import java.util.List;
import java.util.Optional;
import taperbook.session.Caveat;
import taperbook.session.RangeTest;
import taperbook.session.Session;

/**
 * All that was measured of one session.
 *
 * @param session the session
 * @param drives the range tests of its vehicle that the report names
 * @param numbers its numbers
 * @param checks its cross-checks
 * @param curves its curves
 * @param caveats all that a reader must know of it, by kind
 * @param events what happened in it, in order
 */
public record SessionResult(
    Session session,
    Drives drives,
    Numbers numbers,
    List<CrossCheck> checks,
    Curves curves,
    List<Caveat> caveats,
    List<Event> events) {
  /** Copies the lists. */
  public SessionResult {
    checks = List.copyOf(checks);
    caveats = List.copyOf(caveats);
    events = List.copyOf(events);
  }

  /** The same with more numbers. */
  public SessionResult with(Numbers more) {
    return new SessionResult(session, drives, numbers.and(more), checks, curves, caveats, events);
  }

  /** The range test that decides which speed distances rest on, if the report names one. */
  public Optional<RangeTest> rangeTest() {
    return drives.first();
  }

  /** A session in which nothing happened that is told. */
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
