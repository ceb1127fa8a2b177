package taperbook.session;

import java.util.Optional;
import taperbook.quantity.Estimate;

/**
 * One leg of a range-test drive, from {@code legs.csv}.
 *
 * @param name the tester's name for the leg, such as {@code out} or {@code lap 3}
 * @param distance distance in km, as read
 * @param duration driving time, s
 * @param energyUsed energy used, kWh
 * @param soc displayed state of charge at the start and end of the leg, %
 * @param note the tester's note; may be empty
 * @param row the row of the input file
 */
public record Leg(
    String name,
    Estimate distance,
    Optional<Estimate> duration,
    Optional<Estimate> energyUsed,
    Optional<Span> soc,
    String note,
    RowRef row) {
  /** Creates a leg without a note. */
  public Leg(
      String name,
      Estimate distance,
      Optional<Estimate> duration,
      Optional<Estimate> energyUsed,
      Optional<Span> soc,
      RowRef row) {
    this(name, distance, duration, energyUsed, soc, "", row);
  }

  /**
   * State of charge at both ends of a leg.
   *
   * @param start at the start, %
   * @param end at the end, %
   */
  public record Span(Estimate start, Estimate end) {}
}
