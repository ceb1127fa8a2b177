package taperbook.metric.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.format.NumberFormatter;
import taperbook.metric.recording.Recording;
import taperbook.metric.session.Plateau;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.session.Caveat;
import taperbook.session.ConditionItem;
import taperbook.session.Facts;
import taperbook.session.Trace;

/**
 * States what limited the power of a session: the station's rating, a current limit, or neither as
 * far as the readings show.
 */
final class PlateauCaveats {
  /** Tolerance within which a power is attributed to a rating: defined by this report. */
  private static final double CLOSE_SHARE = 0.03;

  private final Recording recording;
  private final Optional<Estimate> station;
  private final Optional<Estimate> car;
  private final Optional<Plateau> plateau;
  private final NumberFormatter formatter;

  private PlateauCaveats(Recording recording) {
    Facts<ConditionItem> facts = recording.session().conditions();
    this.recording = recording;
    this.station = facts.amount(ConditionItem.STATION_RATED_POWER);
    this.car = facts.amount(ConditionItem.VEHICLE_RATED_PEAK_POWER);
    this.plateau = Plateau.of(recording);
    this.formatter = recording.formatter();
  }

  static List<Caveat> of(Recording recording) {
    PlateauCaveats all = new PlateauCaveats(recording);
    List<String> sentences = new ArrayList<>();
    if (all.station.isEmpty()) {
      sentences.add(
          "The station's rated power is not known, so the station may have set the limit.");
    } else {
      all.byRating(all.station.get()).ifPresent(sentences::add);
    }
    all.byCurrent().ifPresent(sentences::add);
    return sentences.stream().map(s -> new Caveat(Caveat.Kind.STATION_LIMIT, s)).toList();
  }

  private String kilowatts(Estimate power) {
    return formatter.value(power, Unit.KILOWATT);
  }

  private Optional<String> byRating(Estimate rating) {
    Optional<Plateau> atRating = plateau.filter(p -> isAtRating(p, rating));
    if (atRating.isPresent()) {
      return Optional.of(powerHeld(atRating.get()) + limitedBy(atRating.get(), rating));
    }
    boolean carIsRatedHigher = car.filter(c -> c.value() > rating.value()).isPresent();
    if (carIsRatedHigher) {
      return Optional.of(
          "The station is rated at "
              + kilowatts(rating)
              + ", below the "
              + kilowatts(car.orElseThrow())
              + " that the maker states for the car"
              + otherReadings(rating));
    }
    return recording.power().flatMap(power -> nearRating(power, rating));
  }

  /** Returns true if within the step of the power or 3 % of the rating, on either side. */
  private static boolean isAtRating(Plateau plateau, Estimate rating) {
    Plateau.Level level = plateau.power();
    return Math.abs(level.estimate().value() - rating.value()) <= close(level.halfStep(), rating);
  }

  private static double close(double halfStep, Estimate rating) {
    return Math.max(2 * halfStep, CLOSE_SHARE * rating.value());
  }

  private String powerHeld(Plateau found) {
    return "The power was held at "
        + kilowatts(found.power().estimate())
        + " for "
        + formatter.value(found.duration(), Unit.SECOND);
  }

  private String limitedBy(Plateau found, Estimate rating) {
    String opening = ", at the station's rating of " + kilowatts(rating);
    if (car.isEmpty()) {
      return opening
          + ": the station may have set the plateau. The peak power that the maker states for the"
          + " car is not known.";
    }
    String rated = kilowatts(car.get());
    double margin = close(found.power().halfStep(), rating);
    if (car.get().value() > rating.value() + margin) {
      return opening
          + ", while the maker states "
          + rated
          + " for the car: the station set the plateau, not the car.";
    }
    return opening
        + ", and the maker states "
        + rated
        + " for the car: whether the station or the car set the plateau cannot be told.";
  }

  private String otherReadings(Estimate rating) {
    Optional<Trace> lower =
        recording.power().filter(p -> p.max() < rating.value() - close(p.halfStep(), rating));
    if (lower.isEmpty()) {
      return ": the station may have set the limit.";
    }
    return ", but the highest power read, "
        + kilowatts(Estimate.around(lower.get().max(), lower.get().halfStep()))
        + ", stays below that rating: something else set the limit first.";
  }

  private Optional<String> nearRating(Trace power, Estimate rating) {
    double margin = close(power.halfStep(), rating);
    if (power.max() > rating.value() + margin) {
      return Optional.of(
          "The highest power read lies above the station's rating of "
              + kilowatts(rating)
              + ": one of the two is not right.");
    }
    return power.max() >= rating.value() - margin
        ? Optional.of(
            "The highest power read comes close to the station's rating of "
                + kilowatts(rating)
                + ": the station may have set the limit.")
        : Optional.empty();
  }

  private Optional<String> byCurrent() {
    return plateau.flatMap(
        p ->
            p.heldCurrent()
                .map(
                    current ->
                        "The plateau follows a current limit of "
                            + formatter.value(current.estimate(), Unit.AMPERE)
                            + ": the current stays flat while the voltage rises. Whether the"
                            + " station, its cable or the car sets that limit cannot be told."));
  }
}
