package taperbook.plan;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;

/**
 * The topics of road travel that a report requests.
 *
 * @param topics the requested topics, in the order of the constants; may be empty
 * @param trip the trip; present exactly if it is a topic
 */
public record RoadWishes(Set<RoadTopic> topics, Optional<Trip> trip) {
  /** No topics. */
  public static final RoadWishes NONE = new RoadWishes(Set.of(), Optional.empty());

  /** States of charge at the start of the plug-in table's rows, %. */
  public static final List<Integer> PLUG_IN_SOC = List.of(0, 10, 20, 30, 40, 50, 60);

  private static final List<Integer> PLUG_IN_DISTANCES = List.of(50, 100, 150, 200);

  public RoadWishes {
    EnumSet<RoadTopic> sorted = EnumSet.noneOf(RoadTopic.class);
    sorted.addAll(topics);
    topics = Collections.unmodifiableSet(sorted);
    if (topics.contains(RoadTopic.TRIP) != trip.isPresent()) {
      throw new IllegalArgumentException("a trip is told of if and only if there is one");
    }
  }

  /** Returns true if the topic is requested. */
  public boolean wants(RoadTopic topic) {
    return topics.contains(topic);
  }

  /** Returns the minimum state of charge at a station and at the end of a leg, %. */
  public int reserveSoc() {
    return trip.map(Trip::reserveSoc).orElse(Trip.DEFAULT_RESERVE_SOC);
  }

  /** Returns the distances of the plug-in table, in the unit of the report. */
  public static List<WantedDistance> plugInDistances(Unit units) {
    return PLUG_IN_DISTANCES.stream().map(amount -> new WantedDistance(amount, units)).toList();
  }

  /** Returns the id of the number in a cell of the plug-in table. */
  public static String plugInId(int fromSoc, WantedDistance distance) {
    return "plug_in_" + fromSoc + "_" + distance.idPart();
  }

  /** Returns the id of the same cell for a battery that is already warm. */
  public static String warmPlugInId(int fromSoc, WantedDistance distance) {
    return plugInId(fromSoc, distance) + "_warm";
  }

  /** Returns the id of a number of one stop of the trip, counted from 1. */
  public static String stopId(int stop, String what) {
    return "trip_stop_" + stop + "_" + what;
  }
}
