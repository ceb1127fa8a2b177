package taperbook.result;

import java.util.List;
import taperbook.quantity.Estimate;

/**
 * Vehicles whose sessions had similar conditions, ranked by one number.
 *
 * @param conditions description of the common conditions
 * @param relativeRunSpread standard deviation between runs of a vehicle, as a share; 0 if not known
 * @param runDegrees degrees of freedom of the spread: number of runs minus number of vehicles; 0 if
 *     not known
 * @param places the vehicles, quickest first
 */
public record Ranking(
    String conditions, double relativeRunSpread, int runDegrees, List<Place> places) {
  public Ranking {
    places = List.copyOf(places);
  }

  /**
   * A vehicle's place.
   *
   * @param vehicle the vehicle
   * @param sessions number of its sessions in the mean
   * @param middle the session with the median number, the lower of two
   * @param mean mean of its sessions with a 95 % interval
   * @param from best possible rank, from 1
   * @param to worst possible rank
   */
  public record Place(
      String vehicle, int sessions, LibraryRow middle, Estimate mean, int from, int to) {}
}
