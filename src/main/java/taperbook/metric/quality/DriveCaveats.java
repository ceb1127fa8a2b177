package taperbook.metric.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.format.NumberFormatter;
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
          .map(c -> isFirst ? c : new Caveat(c.kind(), test.name() + ": " + c.fact(), c.meaning()))
          .forEach(all::add);
    }
    return List.copyOf(all);
  }

  private static String mean(Drives drives, NumberFormatter formatter) {
    List<String> names = drives.agreeing().stream().map(RangeTest::name).toList();
    return "Consumption and range are the mean of "
        + names.size()
        + " drives ("
        + String.join(", ", names)
        + ") at the same speed, within "
        + formatter.exactly(Drives.SAME_SPEED, Unit.KILOMETRE_PER_HOUR)
        + ", and in air within "
        + formatter.degrees(Estimate.exactly(Drives.SIMILAR_TEMPERATURE))
        + " of each other."
        + (names.size() == 2
            ? " Two drives tell little of how much drives differ, hence the wide intervals: a third"
                + " makes them narrower by far."
            : "");
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
        .ifPresent(remark -> all.add(Kind.REMARK, "Of the range test: " + remark));
    return all.caveats;
  }

  private void add(Kind kind, String sentence) {
    add(kind, sentence, "");
  }

  private void add(Kind kind, String fact, String meaning) {
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
          "The range test drove the battery from "
              + formatter.value(start.get(), Unit.PERCENT)
              + " to "
              + formatter.value(end.get(), Unit.PERCENT)
              + ".",
          "The range of a full battery is scaled from that, taking each per cent to drive the same"
              + " distance.");
    }
  }

  private void distanceSource() {
    if (facts.text(RangeItem.DISTANCE_SOURCE).isEmpty()) {
      add(Kind.RANGE_TEST, "What the distance was read from is not known.");
    }
    if (facts.amount(RangeItem.ODOMETER_CORRECTION).isEmpty()) {
      add(
          Kind.RANGE_TEST,
          "The distance is not corrected: how far its source is off is not known, and the bounds"
              + " hold its rounding only.");
    }
  }

  private void speed() {
    if (facts.amount(RangeItem.AVERAGE_SPEED).isEmpty()) {
      add(Kind.DRIVE, "The average speed of the range test is not known.");
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
                    "The average speed of the range test, "
                        + formatter.value(average, Unit.KILOMETRE_PER_HOUR)
                        + ", is far above the speed that was aimed at, "
                        + formatter.value(target, Unit.KILOMETRE_PER_HOUR)
                        + ": one of the two is probably wrong."));
  }

  private void weather() {
    Optional<Estimate> air = facts.amount(RangeItem.AMBIENT_TEMPERATURE);
    if (air.isEmpty()) {
      add(Kind.DRIVE, "The air temperature during the range test is not known.");
    } else {
      MildWeather.below(air.get()).ifPresent(far -> cold(air.get(), far));
      MildWeather.above(air.get()).ifPresent(far -> hot(air.get(), far));
    }
    Optional<Estimate> wind = facts.amount(RangeItem.WIND_SPEED);
    if (wind.isEmpty()) {
      add(Kind.DRIVE, "The wind during the range test is not known.");
    } else if (wind.get().value() >= WIND_KILOMETRES_PER_HOUR) {
      add(
          Kind.DRIVE,
          "A wind of "
              + formatter.value(wind.get(), Unit.KILOMETRE_PER_HOUR)
              + " blew during the range test.",
          "Wind costs energy even out and back.");
    }
  }

  private void cold(Estimate air, Estimate far) {
    add(
        Kind.DRIVE,
        airDuringTest(air)
            + formatter.degrees(far)
            + " colder than "
            + MildWeather.words(formatter)
            + ".",
        "The colder it is, the more heating and the denser air take; in mild weather the car would"
            + " go farther.");
  }

  private void hot(Estimate air, Estimate far) {
    add(
        Kind.DRIVE,
        airDuringTest(air)
            + formatter.degrees(far)
            + " hotter than "
            + MildWeather.words(formatter)
            + ".",
        "The hotter it is, the more cooling takes; in mild weather the car would go farther, unless"
            + " thinner air makes up for it.");
  }

  private String airDuringTest(Estimate air) {
    return "The air was at " + formatter.value(air, Unit.CELSIUS) + " during the range test, ";
  }

  private void route() {
    Optional<String> route = facts.text(RangeItem.ROUTE);
    if (route.isEmpty()) {
      add(Kind.DRIVE, "The shape of the route is not known.");
      return;
    }
    if (!route.get().equals("one way")) {
      return;
    }
    Optional<Estimate> start = facts.amount(RangeItem.START_ELEVATION);
    Optional<Estimate> end = facts.amount(RangeItem.END_ELEVATION);
    if (start.isEmpty() || end.isEmpty()) {
      add(Kind.DRIVE, "The route went one way, and its climb or fall is not known.");
    } else if (Math.abs(end.get().value() - start.get().value()) >= CLIMB_METRES) {
      add(
          Kind.DRIVE,
          "The route went one way and ended "
              + formatter.value(end.get().minus(start.get()), Unit.METRE)
              + " above its start (a minus sign means below).");
    } else {
      add(Kind.DRIVE, "The route went one way, so that wind is not averaged out.");
    }
  }

  private void climateControl() {
    if (facts.text(RangeItem.CLIMATE_CONTROL).isEmpty()) {
      add(Kind.DRIVE, "The setting of heating or cooling in the range test is not known.");
    }
  }
}
