package taperbook.plan;

import java.util.List;
import taperbook.quantity.SocWindow;
import taperbook.quantity.WantedDistance;

/**
 * What a library should show: every session of the folder, a row each.
 *
 * @param name name of the report, that of its file without the ending
 * @param heading what stands at the top
 * @param distances distances to know the time for, in order, not empty; sessions are sorted by the
 *     first in a chart
 * @param window the window of state of charge that times and averages are of
 * @param style how numbers are shown
 * @param article the tester's own text
 */
public record LibraryPlan(
    String name,
    ReportPlan.Heading heading,
    List<WantedDistance> distances,
    SocWindow window,
    ReportPlan.Style style,
    ReportPlan.Article article)
    implements Plan {
  /** Id of the number that tells the battery's temperature at plugging in. */
  public static final String BATTERY_TEMPERATURE = "battery_temperature_at_start";

  /** Id of the time of a day's drive. */
  public static final String DAY_TIME = "day_time";

  /** Id of the stops of a day's drive. */
  public static final String DAY_STOPS = "day_stops";

  /** Id of how much longer the day is with a tenth more consumption. */
  public static final String DAY_MORE_CONSUMPTION = "day_more_consumption_extra_time";

  /** Id of how much longer the day is with 3 minutes for each stop beside charging. */
  public static final String DAY_SHORT_STOPS = "day_3_min_stops_extra_time";

  /** Id of how much longer the day is with 10 minutes for each stop beside charging. */
  public static final String DAY_LONG_STOPS = "day_10_min_stops_extra_time";

  /** Ids of a day's drive: of cars with a drive only, and not in the table of all sessions. */
  public static final List<String> DAY_IDS =
      List.of(DAY_TIME, DAY_STOPS, DAY_MORE_CONSUMPTION, DAY_SHORT_STOPS, DAY_LONG_STOPS);

  /** Copies the distances. */
  public LibraryPlan {
    distances = List.copyOf(distances);
    if (distances.isEmpty()) {
      throw new IllegalArgumentException("a library needs a distance");
    }
  }

  /** Id of the number that tells the time for the window. */
  public String windowTimeId() {
    return "time_soc_" + window.idPart();
  }

  /** Id of the number that tells the average power over time for the window. */
  public String averagePowerId() {
    return "average_power_" + window.idPart();
  }

  /** Id of the number that tells the time to add the first distance. */
  public String firstTimeToAddId() {
    return timeToAddId(distances.get(0));
  }
}
