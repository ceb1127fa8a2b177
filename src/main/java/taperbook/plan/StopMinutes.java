package taperbook.plan;

import java.util.List;

/** How long the stops last that it is told of what they buy, and what the numbers are called. */
public final class StopMinutes {
  /** The minutes, rising. */
  public static final List<Integer> ALL = List.of(5, 10, 15, 20, 30);

  private StopMinutes() {}

  /** Id of the distance added after so many minutes. */
  public static String distanceId(int minutes) {
    return "distance_after_" + minutes + "_min";
  }

  /** Id of the state of charge after so many minutes. */
  public static String socId(int minutes) {
    return "soc_after_" + minutes + "_min";
  }

  /** Id of the energy added after so many minutes. */
  public static String energyId(int minutes) {
    return "energy_after_" + minutes + "_min";
  }
}
