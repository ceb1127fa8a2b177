package taperbook.plan;

import java.util.List;
import taperbook.quantity.SocWindow;
import taperbook.quantity.WantedDistance;

/**
 * The plan of a library: every session of the folder, one row each.
 *
 * @param name name of the report: that of its file without the extension
 * @param heading title and author
 * @param distances distances to compute the time for, in order, not empty; a chart sorts sessions
 *     by the first
 * @param window the window of state of charge for times and averages
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
  /** Id of the number for the battery's temperature at plugging in. */
  public static final String BATTERY_TEMPERATURE = "battery_temperature_at_start";

  /** Id of the time of a day's drive. */
  public static final String DAY_TIME = "day_time";

  /** Id of the stops of a day's drive. */
  public static final String DAY_STOPS = "day_stops";

  /** Id of the extra time of the day for 10 % more consumption. */
  public static final String DAY_MORE_CONSUMPTION = "day_more_consumption_extra_time";

  /** Id of the extra time of the day if each stop takes 3 minutes in addition to charging. */
  public static final String DAY_SHORT_STOPS = "day_3_min_stops_extra_time";

  /** Id of the extra time of the day if each stop takes 10 minutes in addition to charging. */
  public static final String DAY_LONG_STOPS = "day_10_min_stops_extra_time";

  /** Ids for a day's drive: only for cars with a drive, and not in the table of all sessions. */
  public static final List<String> DAY_IDS =
      List.of(DAY_TIME, DAY_STOPS, DAY_MORE_CONSUMPTION, DAY_SHORT_STOPS, DAY_LONG_STOPS);

  public LibraryPlan {
    distances = List.copyOf(distances);
    if (distances.isEmpty()) {
      throw new IllegalArgumentException("a library needs a distance");
    }
  }

  /** Returns the id of the number for the time for the window. */
  public String windowTimeId() {
    return "time_soc_" + window.idPart();
  }

  /** Returns the id of the number for the average power over time in the window. */
  public String averagePowerId() {
    return "average_power_" + window.idPart();
  }

  /** Returns the id of the number for the time to add the first distance. */
  public String firstTimeToAddId() {
    return timeToAddId(distances.get(0));
  }
}
