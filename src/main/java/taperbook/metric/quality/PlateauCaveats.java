package taperbook.metric.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
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
    List<Message> sentences = new ArrayList<>();
    if (all.station.isEmpty()) {
      sentences.add(Message.of("metric.plateau_caveats.station_s_rated_power_is"));
    } else {
      all.byRating(all.station.get()).ifPresent(sentences::add);
    }
    all.byCurrent().ifPresent(sentences::add);
    return sentences.stream().map(s -> new Caveat(Caveat.Kind.STATION_LIMIT, s)).toList();
  }

  private String kilowatts(Estimate power) {
    return formatter.value(power, Unit.KILOWATT);
  }

  private Optional<Message> byRating(Estimate rating) {
    Optional<Plateau> atRating = plateau.filter(p -> isAtRating(p, rating));
    if (atRating.isPresent()) {
      return Optional.of(limitedBy(atRating.get(), rating));
    }
    boolean carIsRatedHigher = car.filter(c -> c.value() > rating.value()).isPresent();
    if (carIsRatedHigher) {
      return Optional.of(
          Message.of(
              "metric.plateau_caveats.station_is_rated_at_below",
              kilowatts(rating),
              kilowatts(car.orElseThrow()),
              otherReadings(rating)));
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
    return Texts.of(
        "metric.plateau_caveats.power_was_held_at_for",
        kilowatts(found.power().estimate()),
        formatter.value(found.duration(), Unit.SECOND));
  }

  private Message limitedBy(Plateau found, Estimate rating) {
    String opening =
        powerHeld(found)
            + Texts.of("metric.plateau_caveats.at_station_s_rating_of", kilowatts(rating));
    if (car.isEmpty()) {
      return Message.of("metric.plateau_caveats.station_may_have_set_plateau", opening);
    }
    String rated = kilowatts(car.get());
    double margin = close(found.power().halfStep(), rating);
    if (car.get().value() > rating.value() + margin) {
      return Message.of("metric.plateau_caveats.while_maker_states_for_car", opening, rated);
    }
    return Message.of("metric.plateau_caveats.and_maker_states_for_car", opening, rated);
  }

  private String otherReadings(Estimate rating) {
    Optional<Trace> lower =
        recording.power().filter(p -> p.max() < rating.value() - close(p.halfStep(), rating));
    if (lower.isEmpty()) {
      return Texts.of("metric.plateau_caveats.station_may_have_set_limit");
    }
    return Texts.of(
        "metric.plateau_caveats.but_highest_power_read_stays",
        kilowatts(Estimate.around(lower.get().max(), lower.get().halfStep())));
  }

  private Optional<Message> nearRating(Trace power, Estimate rating) {
    double margin = close(power.halfStep(), rating);
    if (power.max() > rating.value() + margin) {
      return Optional.of(
          Message.of("metric.plateau_caveats.highest_power_read_lies_above", kilowatts(rating)));
    }
    return power.max() >= rating.value() - margin
        ? Optional.of(
            Message.of("metric.plateau_caveats.highest_power_read_comes_close", kilowatts(rating)))
        : Optional.empty();
  }

  private Optional<Message> byCurrent() {
    return plateau.flatMap(
        p ->
            p.heldCurrent()
                .map(
                    current ->
                        Message.of(
                            "metric.plateau_caveats.plateau_follows_current_limit_of",
                            formatter.value(current.estimate(), Unit.AMPERE))));
  }
}
