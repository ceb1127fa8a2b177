package taperbook.result;

import java.util.List;

/** Where a number is shown, beside the list of all numbers. */
public enum Role {
  /** At the top and in libraries, first: what minutes buy. */
  MINUTES,
  /** At the top and in libraries. */
  HEADLINE,
  /** In libraries only. */
  LIBRARY,
  /** In the table of a library's day of one drive. */
  DAY,
  /** In the table of the charging curve, where it was measured. */
  CURVE,
  /** In the table of the battery's energy, where it was measured. */
  ENERGY,
  /** In the table of the later stops of a day. */
  STOPS,
  /** In the table of cold runs over warm ones. */
  SEASON,
  /** Beside the chart of distance for each minute. */
  PER_MINUTE,
  /** Among the parts of the correction to standard air, where it was measured. */
  CORRECTION,
  /** In the table of both ways of a drive, where it was measured. */
  TWO_WAY,
  /** In the table of costs. */
  COST,
  /** In the table of a trip. */
  TRIP;

  /** What the table of a library has columns for, in order. */
  public static final List<Role> COLUMNS = List.of(MINUTES, HEADLINE, LIBRARY);
}
