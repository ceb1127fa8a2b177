package taperbook.session;

import java.util.Set;

/** Data that a number is computed from; determines which caveats apply to it. */
public enum Input {
  READINGS,
  /** Power, state of charge and energy over time. */
  COURSE,
  /** The energy counter. */
  ENERGY,
  /** The full duration of the session, not only a window of it. */
  WHOLE_SESSION,
  /** The range test. */
  RANGE_TEST;

  /** Inputs of a number that is based on the charging session. */
  public static final Set<Input> CHARGING = Set.of(READINGS, COURSE);

  /** Inputs of a number that is based only on the range test. */
  public static final Set<Input> DRIVE = Set.of(RANGE_TEST);

  /** Inputs of a number that is based on the session and the range test. */
  public static final Set<Input> ROAD = Set.of(READINGS, COURSE, RANGE_TEST);
}
