package taperbook.metric.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.Drives;
import taperbook.session.Caveat;
import taperbook.session.Caveat.Kind;
import taperbook.session.Facts;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;

/**
 * Caveats of a range test, derived from its record. Thresholds are common practice without a
 * source.
 */
public final class DriveCaveats {
  /** Wind speed from which a caveat is added. */
  private static final double WIND_KILOMETRES_PER_HOUR = 10;

  /** Difference in height between start and end from which a caveat is added. */
  private static final double CLIMB_METRES = 50;

  /** Ratio of average to target speed from which one of the two is doubted. */
  private static final double FAR_ABOVE_TARGET = 1.05;

  private final Facts<RangeItem> facts;
  private final NumberFormatter formatter;
  private final List<Caveat> caveats = new ArrayList<>();

  private DriveCaveats(RangeTest test, NumberFormatter formatter) {
    this.facts = test.facts();
    this.formatter = formatter;
  }

  /**
   * Returns the caveats of the drives that distances use: all of the first drive, and the differing
   * ones of each other drive.
   */
  public static List<Caveat> of(Drives drives, NumberFormatter formatter) {
    List<Caveat> all = new ArrayList<>();
    for (RangeTest test : drives.agreeing()) {
      List<Caveat> own = of(test, formatter);
      boolean isFirst = all.isEmpty();
      if (isFirst && drives.agreeing().size() > 1) {
        all.add(new Caveat(Kind.RANGE_TEST, mean(drives, formatter)));
      }
      own.stream()
          .filter(c -> !all.contains(c))
          .map(c -> isFirst ? c : c.about(test.name()))
          .forEach(all::add);
    }
    return List.copyOf(all);
  }

  private static Message mean(Drives drives, NumberFormatter formatter) {
    List<String> names = drives.agreeing().stream().map(RangeTest::name).toList();
    return Message.of(
        "metric.drive_caveats.consumption_and_range_are_mean",
        names.size(),
        String.join(", ", names),
        formatter.exactly(Drives.SAME_SPEED, Unit.KILOMETRE_PER_HOUR),
        formatter.degrees(Estimate.exactly(Drives.SIMILAR_TEMPERATURE)),
        names.size() == 2 ? Texts.of("metric.drive_caveats.two_drives_tell_little_of") : "");
  }

  private static List<Caveat> of(RangeTest test, NumberFormatter formatter) {
    DriveCaveats all = new DriveCaveats(test, formatter);
    all.partOfBattery();
    all.distanceSource();
    all.speed();
    all.weather();
    all.route();
    all.caveats.addAll(RouteCaveats.of(test, formatter));
    all.climateControl();
    all.facts
        .text(RangeItem.REMARKS)
        .ifPresent(
            remark ->
                all.add(Kind.REMARK, Message.of("metric.drive_caveats.of_range_test", remark)));
    return all.caveats;
  }

  private void add(Kind kind, Message sentence) {
    caveats.add(new Caveat(kind, sentence));
  }

  private void add(Kind kind, Message fact, Message meaning) {
    caveats.add(new Caveat(kind, fact, meaning));
  }

  private void partOfBattery() {
    Optional<Estimate> start = facts.amount(RangeItem.START_SOC);
    Optional<Estimate> end = facts.amount(RangeItem.END_SOC);
    if (start.isEmpty() || end.isEmpty()) {
      return;
    }
    boolean whole = start.get().value() >= 100 && end.get().value() <= 0;
    if (!whole) {
      add(
          Kind.RANGE_TEST,
          Message.of(
              "metric.drive_caveats.range_test_drove_battery_from",
              formatter.value(start.get(), Unit.PERCENT),
              formatter.value(end.get(), Unit.PERCENT)),
          Message.of("metric.drive_caveats.range_of_full_battery_is"));
    }
  }

  private void distanceSource() {
    if (facts.text(RangeItem.DISTANCE_SOURCE).isEmpty()) {
      add(Kind.RANGE_TEST, Message.of("metric.drive_caveats.what_distance_was_read_from"));
    }
    if (facts.amount(RangeItem.ODOMETER_CORRECTION).isEmpty()) {
      add(Kind.RANGE_TEST, Message.of("metric.drive_caveats.distance_is_not_corrected_how"));
    }
  }

  private void speed() {
    if (facts.amount(RangeItem.AVERAGE_SPEED).isEmpty()) {
      add(Kind.DRIVE, Message.of("metric.drive_caveats.average_speed_of_range_test"));
      return;
    }
    Estimate average = facts.amount(RangeItem.AVERAGE_SPEED).get();
    facts
        .amount(RangeItem.TARGET_SPEED)
        .filter(target -> average.bounds().low() > FAR_ABOVE_TARGET * target.bounds().high())
        .ifPresent(
            target ->
                add(
                    Kind.DRIVE,
                    Message.of(
                        "metric.drive_caveats.average_speed_of_range_test_is",
                        formatter.value(average, Unit.KILOMETRE_PER_HOUR),
                        formatter.value(target, Unit.KILOMETRE_PER_HOUR))));
  }

  private void weather() {
    Optional<Estimate> air = facts.amount(RangeItem.AMBIENT_TEMPERATURE);
    if (air.isEmpty()) {
      add(Kind.DRIVE, Message.of("metric.drive_caveats.air_temperature_during_range_test"));
    } else {
      MildWeather.below(air.get()).ifPresent(far -> cold(air.get(), far));
      MildWeather.above(air.get()).ifPresent(far -> hot(air.get(), far));
    }
    Optional<Estimate> wind = facts.amount(RangeItem.WIND_SPEED);
    if (wind.isEmpty()) {
      add(Kind.DRIVE, Message.of("metric.drive_caveats.wind_during_range_test_is"));
    } else if (wind.get().value() >= WIND_KILOMETRES_PER_HOUR) {
      add(
          Kind.DRIVE,
          Message.of(
              "metric.drive_caveats.wind_of_blew_during_range",
              formatter.value(wind.get(), Unit.KILOMETRE_PER_HOUR)),
          Message.of("metric.drive_caveats.wind_costs_energy_even_out"));
    }
  }

  private void cold(Estimate air, Estimate far) {
    add(
        Kind.DRIVE,
        Message.of(
            "metric.common.colder_than",
            airDuringTest(air),
            formatter.degrees(far),
            MildWeather.words(formatter)),
        Message.of("metric.drive_caveats.colder_it_is_more_heating"));
  }

  private void hot(Estimate air, Estimate far) {
    add(
        Kind.DRIVE,
        Message.of(
            "metric.common.hotter_than",
            airDuringTest(air),
            formatter.degrees(far),
            MildWeather.words(formatter)),
        Message.of("metric.drive_caveats.hotter_it_is_more_cooling"));
  }

  private String airDuringTest(Estimate air) {
    return Texts.of(
        "metric.drive_caveats.air_was_at_during_range", formatter.value(air, Unit.CELSIUS));
  }

  private void route() {
    Optional<String> route = facts.text(RangeItem.ROUTE);
    if (route.isEmpty()) {
      add(Kind.DRIVE, Message.of("metric.drive_caveats.shape_of_route_is_not"));
      return;
    }
    if (!route.get().equals("one way")) {
      return;
    }
    Optional<Estimate> start = facts.amount(RangeItem.START_ELEVATION);
    Optional<Estimate> end = facts.amount(RangeItem.END_ELEVATION);
    if (start.isEmpty() || end.isEmpty()) {
      add(Kind.DRIVE, Message.of("metric.drive_caveats.route_went_one_way_and"));
    } else if (Math.abs(end.get().value() - start.get().value()) >= CLIMB_METRES) {
      add(
          Kind.DRIVE,
          Message.of(
              "metric.drive_caveats.route_went_one_way_and_ended",
              formatter.value(end.get().minus(start.get()), Unit.METRE)));
    } else {
      add(Kind.DRIVE, Message.of("metric.drive_caveats.route_went_one_way_so"));
    }
  }

  private void climateControl() {
    if (facts.text(RangeItem.CLIMATE_CONTROL).isEmpty()) {
      add(Kind.DRIVE, Message.of("metric.drive_caveats.setting_of_heating_or_cooling"));
    }
  }
}
