package taperbook.result;

import java.util.List;
import java.util.Optional;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;

/**
 * A number that is no longer what it was when the report was published.
 *
 * @param id its id
 * @param session the session it is about
 * @param against the session that one is held against; empty if there is none
 * @param label the number in words
 * @param unit its unit, a base unit
 * @param before what it was; empty if it was withheld or did not exist
 * @param after what it is; empty if it is withheld or no longer exists
 * @param causes the changes of the input that moved it, each in words
 */
public record MovedNumber(
    String id,
    String session,
    String against,
    String label,
    Unit unit,
    Optional<Estimate> before,
    Optional<Estimate> after,
    List<String> causes) {
  /** Copies the causes. */
  public MovedNumber {
    causes = List.copyOf(causes);
  }

  /** The same number with causes. */
  public MovedNumber because(List<String> named) {
    return new MovedNumber(id, session, against, label, unit, before, after, named);
  }

  /** True for a number of a trip, whose times are planned in whole minutes. */
  public boolean ofTrip() {
    return id.startsWith("trip_");
  }

  /**
   * True if the new value lies outside the interval that was printed, or one of both is missing.
   */
  public boolean beyond() {
    return before.isEmpty()
        || after.isEmpty()
        || !before.get().bounds().contains(after.get().value());
  }
}
