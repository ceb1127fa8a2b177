package taperbook.result;

import java.util.List;
import java.util.Optional;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;

/**
 * A number that has changed since the report was published.
 *
 * @param id its id
 * @param session the session it is about
 * @param against the session that one is compared with; empty if there is none
 * @param label description of the number
 * @param unit its unit, a base unit
 * @param before the published value; empty if it was withheld or did not exist
 * @param after the current value; empty if it is withheld or no longer exists
 * @param causes descriptions of the input changes that moved it
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
  public MovedNumber {
    causes = List.copyOf(causes);
  }

  /** Returns the same number with causes. */
  public MovedNumber withCauses(List<String> named) {
    return new MovedNumber(id, session, against, label, unit, before, after, named);
  }

  /** Returns true for a number of a trip, whose times are planned in whole minutes. */
  public boolean isOfTrip() {
    return id.startsWith("trip_");
  }

  /** Returns true if the new value lies outside the printed interval, or if either is missing. */
  public boolean isOutsideInterval() {
    return before.isEmpty()
        || after.isEmpty()
        || !before.get().bounds().contains(after.get().value());
  }
}
