package taperbook.plan;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;

/**
 * What a report asks for about the road.
 *
 * @param topics what is to be told, in the order of the topics; perhaps nothing
 * @param trip the trip; present exactly if it is to be told of
 */
public record RoadWishes(Set<RoadTopic> topics, Optional<Trip> trip) {
  /** Nothing of the road. */
  public static final RoadWishes NONE = new RoadWishes(Set.of(), Optional.empty());

  /** States of charge that the plug-in table begins at, %. */
  public static final List<Integer> PLUG_IN_SOC = List.of(0, 10, 20, 30, 40, 50, 60);

  private static final List<Integer> PLUG_IN_DISTANCES = List.of(50, 100, 150, 200);

  /** Copies the topics. */
  public RoadWishes {
    EnumSet<RoadTopic> sorted = EnumSet.noneOf(RoadTopic.class);
    sorted.addAll(topics);
    topics = Collections.unmodifiableSet(sorted);
    if (topics.contains(RoadTopic.TRIP) != trip.isPresent()) {
      throw new IllegalArgumentException("a trip is told of if and only if there is one");
    }
  }

  /** True if this is to be told. */
  public boolean wants(RoadTopic topic) {
    return topics.contains(topic);
  }

  /** Least state of charge at a station and at the end of a leg, %. */
  public int reserveSoc() {
    return trip.map(Trip::reserveSoc).orElse(Trip.USUAL_RESERVE_SOC);
  }

  /** Distances of the plug-in table, in the unit of the report. */
  public static List<WantedDistance> plugInDistances(Unit units) {
    return PLUG_IN_DISTANCES.stream().map(amount -> new WantedDistance(amount, units)).toList();
  }

  /** Id of the number in a cell of the plug-in table. */
  public static String plugInId(int fromSoc, WantedDistance distance) {
    return "plug_in_" + fromSoc + "_" + distance.idPart();
  }

  /** Id of the same cell with a battery that is warm already. */
  public static String warmPlugInId(int fromSoc, WantedDistance distance) {
    return plugInId(fromSoc, distance) + "_warm";
  }

  /** Id of a number of one stop of the trip, counted from 1. */
  public static String stopId(int stop, String what) {
    return "trip_stop_" + stop + "_" + what;
  }
}
