package taperbook.result;

import java.util.List;
import taperbook.quantity.Estimate;

/**
 * Vehicles whose sessions had conditions alike, ranked by one number.
 *
 * @param conditions what they have alike, in words
 * @param relativeRunSpread standard deviation between runs of a vehicle, as a share; 0 if not known
 * @param runDegrees from how many runs it is known, less the vehicles they are of; 0 if not so
 * @param places the vehicles, quickest first
 */
public record Ranking(
    String conditions, double relativeRunSpread, int runDegrees, List<Place> places) {
  /** Copies the places. */
  public Ranking {
    places = List.copyOf(places);
  }

  /**
   * A vehicle's place.
   *
   * @param vehicle the vehicle
   * @param sessions how many of its sessions the mean is of
   * @param middle the session whose number is the middle one, the lower of two
   * @param mean mean of its sessions with a 95 % interval
   * @param from best rank that it can have, from 1
   * @param to worst rank that it can have
   */
  public record Place(
      String vehicle, int sessions, LibraryRow middle, Estimate mean, int from, int to) {}
}
