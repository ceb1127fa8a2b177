package taperbook.plan;

import java.util.List;

/** Stop durations for which the distance added is reported, and the ids of their numbers. */
public final class StopMinutes {
  /** The minutes, ascending. */
  public static final List<Integer> ALL = List.of(5, 10, 15, 20, 30);

  private StopMinutes() {}

  /** Returns the id of the distance added after a number of minutes. */
  public static String distanceId(int minutes) {
    return "distance_after_" + minutes + "_min";
  }

  /** Returns the id of the state of charge after a number of minutes. */
  public static String socId(int minutes) {
    return "soc_after_" + minutes + "_min";
  }

  /** Returns the id of the energy added after a number of minutes. */
  public static String energyId(int minutes) {
    return "energy_after_" + minutes + "_min";
  }
}
