package taperbook.session;

import java.util.Set;

/** What a number is computed from, and so which caveats concern it. */
public enum Input {
  /** Readings of the session. */
  READINGS,
  /** The course of power, charge and energy over time. */
  COURSE,
  /** The energy counter. */
  ENERGY,
  /** All times of the session, not those of one window alone. */
  WHOLE_SESSION,
  /** The range test. */
  RANGE_TEST;

  /** Inputs of a number that rests on the charging session. */
  public static final Set<Input> CHARGING = Set.of(READINGS, COURSE);

  /** Inputs of a number that rests on the range test alone. */
  public static final Set<Input> DRIVE = Set.of(RANGE_TEST);

  /** Inputs of a number that rests on the session and the range test. */
  public static final Set<Input> ROAD = Set.of(READINGS, COURSE, RANGE_TEST);
}
