package taperbook.result;

import java.util.List;

/** Places where a number is shown, in addition to the list of all numbers. */
public enum Role {
  /** At the top and in libraries, first: distance for charging time. */
  MINUTES,
  /** At the top and in libraries. */
  HEADLINE,
  /** In libraries only. */
  LIBRARY,
  /** In a library's table of a day's drive. */
  DAY,
  /** In the table of the charging curve, if measured. */
  CURVE,
  /** In the table of the battery's energy, if measured. */
  ENERGY,
  /** In the table of the later stops of a day. */
  STOPS,
  /** In the table of cold relative to warm runs. */
  SEASON,
  /** Beside the chart of distance per minute. */
  PER_MINUTE,
  /** Among the parts of the correction to standard air, if measured. */
  CORRECTION,
  /** In the table of both directions of a drive, if measured. */
  TWO_WAY,
  COST,
  TRIP;

  /** Roles that are columns in the table of a library, in order. */
  public static final List<Role> COLUMNS = List.of(MINUTES, HEADLINE, LIBRARY);
}
