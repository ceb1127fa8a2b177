package taperbook.metric.quality;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.format.NumberFormatter;
import taperbook.metric.Sessions;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.Drives;
import taperbook.result.SessionResult;
import taperbook.session.Caveat;
import taperbook.session.Caveat.Kind;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.Fact;
import taperbook.session.Facts;
import taperbook.session.HowKnown;
import taperbook.session.Leg;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.RowRef;
import taperbook.session.Session;

final class SessionCaveatsTest {
  private static Sessions start() {
    return Sessions.session()
        .channel(Channel.SOC, 0.5, new double[] {0, 600, 1200}, new double[] {12, 40, 60})
        .channel(Channel.POWER, 0.5, new double[] {0, 600, 1200}, new double[] {90, 120, 80});
  }

  /** A session with known and unremarkable conditions. */
  private static Sessions wellKnown() {
    return start()
        .amount(ConditionItem.BATTERY_TEMPERATURE_AT_START, 28, 0.5)
        .text(ConditionItem.PRECONDITIONED, "yes")
        .amount(ConditionItem.PRECONDITIONING_TIME, 1800, 30)
        .amount(ConditionItem.STATION_RATED_POWER, 200, 0.5)
        .amount(ConditionItem.VEHICLE_RATED_PEAK_POWER, 150, 0.5)
        .text(ConditionItem.STATION_SHARED, "no")
        .amount(ConditionItem.ODOMETER, 12000, 0.5)
        .amount(ConditionItem.AMBIENT_TEMPERATURE, 18, 0.5)
        .text(ConditionItem.READ_FROM, "log")
        .text(ConditionItem.DISPLAY_ROUNDS, "nearest");
  }

  private static List<String> of(Session session, Kind kind) {
    return Sessions.measure(session).main().caveats().stream()
        .filter(c -> c.kind() == kind)
        .map(Caveat::sentence)
        .toList();
  }

  @Test
  void every_unknown_item_adds_a_caveat() {
    Session session = start().build();
    assertThat(of(session, Kind.BATTERY_TEMPERATURE))
        .singleElement()
        .asString()
        .contains("not known");
    assertThat(of(session, Kind.PRECONDITIONING)).singleElement().asString().contains("not known");
    assertThat(of(session, Kind.STATION_LIMIT)).singleElement().asString().contains("not known");
    assertThat(of(session, Kind.STATION_SHARED)).singleElement().asString().contains("not known");
    assertThat(of(session, Kind.ODOMETER)).singleElement().asString().contains("not known");
    assertThat(of(session, Kind.AMBIENT_TEMPERATURE))
        .singleElement()
        .asString()
        .contains("not known");
    assertThat(of(session, Kind.READINGS)).singleElement().asString().contains("not known");
  }

  @Test
  void a_well_documented_session_has_only_unavoidable_caveats() {
    List<Kind> kinds =
        Sessions.measure(wellKnown().build()).main().caveats().stream().map(Caveat::kind).toList();
    assertThat(kinds).containsOnly(Kind.STARTING_SOC, Kind.GAPS, Kind.CLOCK, Kind.CHANNELS);
  }

  @Test
  void the_recording_method_is_one_caveat() {
    Session session =
        wellKnown()
            .text(ConditionItem.READ_FROM, "by eye")
            .unknown(ConditionItem.DISPLAY_ROUNDS)
            .build();
    assertThat(of(session, Kind.READINGS))
        .containsExactly(
            "The readings were taken by eye, so no recording can settle a doubt about one. How the"
                + " display of the state of charge rounds is not known: a true charge is stated for"
                + " rounding to the nearest step, down and up. Times and distances do not depend on"
                + " it. Whether rows were written as the display changed is not known: intervals"
                + " allow for both, and declaring rows written narrows them.");
  }

  @Test
  void delayed_displays_shift_times_and_not_durations() {
    assertThat(of(wellKnown().amount(ConditionItem.DISPLAY_LAG, 3, 1).build(), Kind.READINGS))
        .singleElement()
        .asString()
        .isEqualTo(
            "The displays follow by 3\u00a0s: power and charge were as displayed that much earlier"
                + " after plugging in. Times between two displayed values, amounts and averages do"
                + " not change.");
    assertThat(of(wellKnown().amount(ConditionItem.DISPLAY_LAG, 0, 0).build(), Kind.READINGS))
        .isEmpty();
  }

  @Test
  void a_log_has_a_caveat_only_if_its_display_is_not_declared() {
    assertThat(of(wellKnown().unknown(ConditionItem.DISPLAY_ROUNDS).build(), Kind.READINGS))
        .containsExactly(
            "How the display of the state of charge rounds is not known: a true charge is stated for"
                + " rounding to the nearest step, down and up. Times and distances do not depend on"
                + " it.");
    assertThat(of(wellKnown().text(ConditionItem.DISPLAY_ROUNDS, "up").build(), Kind.READINGS))
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      nullValues = "-",
      delimiter = '|',
      value = {
        "station|battery|no|Power was measured at the station and energy was counted at the battery:"
            + " the two differ by losses and what heating or cooling takes.",
        "station|battery|-|Power was measured at the station and energy was counted at the battery:"
            + " the two differ by losses and what heating or cooling takes. Whether power and energy"
            + " include what heating or cooling the battery and the cabin took is not known.",
        "station|inlet|yes|Power was measured at the station and energy was counted at the inlet:"
            + " the two differ by the losses of station and cable.",
        "car|station|yes|Power was measured at the car and energy was counted at the station: the"
            + " two differ by losses and perhaps what heating or cooling takes.",
        "car|inlet|-|Whether power and energy include what heating or cooling the battery and the"
            + " cabin took is not known.",
        "-|station|-|Whether power and energy include what heating or cooling the battery and the"
            + " cabin took is not known.",
        "station|station|yes|-",
        "car|battery|-|-",
        "-|-|-|-",
      })
  void different_places_of_power_and_energy_are_one_caveat(
      @Nullable String power,
      @Nullable String energy,
      @Nullable String heating,
      @Nullable String caveat) {
    Sessions session = wellKnown();
    declare(session, ConditionItem.POWER_MEASURED_AT, power);
    declare(session, ConditionItem.ENERGY_COUNTED_AT, energy);
    declare(session, ConditionItem.HEATING_INCLUDED, heating);
    assertThat(of(session.build(), Kind.ENERGY_COUNTER))
        .isEqualTo(caveat == null ? List.of() : List.of(caveat));
  }

  private static void declare(Sessions session, ConditionItem item, @Nullable String text) {
    if (text == null) {
      session.unknown(item);
    } else {
      session.text(item, text);
    }
  }

  @Test
  void late_preconditioning_adds_a_caveat() {
    Session session = wellKnown().amount(ConditionItem.PRECONDITIONING_TIME, 240, 30).build();
    assertThat(of(session, Kind.PRECONDITIONING))
        .singleElement()
        .asString()
        .contains("only 4\u00a0min")
        .contains("too late");
  }

  @Test
  void a_cool_battery_adds_a_caveat() {
    Session session =
        wellKnown().amount(ConditionItem.BATTERY_TEMPERATURE_AT_START, 9, 0.5).build();
    assertThat(of(session, Kind.BATTERY_TEMPERATURE))
        .singleElement()
        .asString()
        .contains("9\u00a0°C");
  }

  @Test
  void a_station_rated_below_the_car_adds_a_caveat() {
    Session session = wellKnown().amount(ConditionItem.STATION_RATED_POWER, 125, 0.5).build();
    assertThat(of(session, Kind.STATION_LIMIT))
        .singleElement()
        .asString()
        .contains("125\u00a0kW")
        .contains("150\u00a0kW");
  }

  @Test
  void a_peak_at_the_station_rating_adds_a_caveat() {
    Session session =
        wellKnown()
            .amount(ConditionItem.STATION_RATED_POWER, 122, 0.5)
            .amount(ConditionItem.VEHICLE_RATED_PEAK_POWER, 120, 0.5)
            .build();
    assertThat(of(session, Kind.STATION_LIMIT)).singleElement().asString().contains("rating");
  }

  @Test
  void a_peak_in_the_first_reading_is_a_caveat_of_the_peak() {
    SessionResult result =
        Sessions.measure(
                wellKnown()
                    .channel(
                        Channel.POWER,
                        0.5,
                        new double[] {0, 600, 1200},
                        new double[] {120, 110, 80})
                    .build())
            .main();
    assertThat(result.numbers().get("peak_power").caveats())
        .anySatisfy(c -> assertThat(c.sentence()).contains("first reading"));
  }

  @Test
  void numbers_of_the_curve_have_the_caveats_of_the_session_and_single_readings_do_not() {
    SessionResult result = Sessions.measure(start().build()).main();
    assertThat(result.numbers().get("peak_power").caveats())
        .anySatisfy(c -> assertThat(c.kind()).isEqualTo(Kind.BATTERY_TEMPERATURE));
    assertThat(result.numbers().get("start_soc").caveats())
        .noneSatisfy(c -> assertThat(c.kind()).isEqualTo(Kind.BATTERY_TEMPERATURE));
  }

  @Test
  void an_average_speed_far_above_the_target_adds_a_caveat() {
    assertThat(ofSpeeds(120, 110)).singleElement().asString().contains("far above the speed");
    assertThat(ofSpeeds(113, 110)).isEmpty();
    assertThat(ofSpeeds(93, 110)).isEmpty();
  }

  private static List<String> ofSpeeds(double average, double target) {
    return DriveCaveats.of(
            new Drives(
                List.of(
                    Sessions.rangeTest(
                        Map.of(
                            RangeItem.AVERAGE_SPEED, Estimate.around(average, 0.5),
                            RangeItem.TARGET_SPEED, Estimate.around(target, 0.5))))),
            new NumberFormatter(Unit.KILOMETRE))
        .stream()
        .map(Caveat::sentence)
        .filter(sentence -> sentence.startsWith("The average speed"))
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "12, '12 °C, 3 °C colder'",
    "10, '10 °C, 5 °C colder'",
    "-4, '\u22124 °C, 19 °C colder'",
  })
  void the_caveat_about_cold_air_states_the_temperature(double celsius, String expected) {
    Session session = wellKnown().amount(ConditionItem.AMBIENT_TEMPERATURE, celsius, 0.5).build();
    assertThat(of(session, Kind.AMBIENT_TEMPERATURE))
        .containsExactly(
            "The air was at "
                + expected.replace(" °C", "\u00a0°C")
                + " than mild weather (taken as 15 to 25\u00a0°C). The colder it is, the"
                + " more a battery may charge below the curve of mild weather.");
  }

  @Test
  void hot_air_adds_a_caveat_and_mild_air_does_not() {
    for (double celsius : new double[] {15, 20, 25}) {
      Session mild = wellKnown().amount(ConditionItem.AMBIENT_TEMPERATURE, celsius, 0.5).build();
      assertThat(of(mild, Kind.AMBIENT_TEMPERATURE)).isEmpty();
    }
    Session hot = wellKnown().amount(ConditionItem.AMBIENT_TEMPERATURE, 33, 0.5).build();
    assertThat(of(hot, Kind.AMBIENT_TEMPERATURE))
        .containsExactly(
            "The air was at 33\u00a0°C, 8\u00a0°C hotter than mild weather (taken as 15 to 25\u00a0°C)."
                + " The hotter it is, the more cooling takes, and the sooner a"
                + " battery may limit its power.");
  }

  @Test
  void the_caveat_about_a_cool_battery_states_the_temperature() {
    Session session =
        wellKnown().amount(ConditionItem.BATTERY_TEMPERATURE_AT_START, 22, 0.5).build();
    assertThat(of(session, Kind.BATTERY_TEMPERATURE))
        .containsExactly(
            "The battery was at 22\u00a0°C at plugging in, 3\u00a0°C below the 25\u00a0°C from which"
                + " on a battery is taken to be warm enough. The cooler it is, the"
                + " further and longer it charges below its curve.");
  }

  @ParameterizedTest
  @CsvSource(
      nullValues = "-",
      delimiter = '|',
      value = {
        "loop|212|281|The route is stated as loop, but it ended 69 m above its start: one of the two"
            + " is wrong, or the drive did not come back to where it began.",
        "out and back|300|250|The route is stated as out and back, but it ended 50 m below its start:"
            + " one of the two is wrong, or the drive did not come back to where it began.",
        "loop|212|220|-",
        "one way|212|281|-",
      })
  void a_route_that_contradicts_its_elevations_adds_a_caveat(
      String route, double start, double end, @Nullable String expected) {
    RangeTest plain =
        Sessions.rangeTest(
            Map.of(
                RangeItem.START_ELEVATION, Estimate.around(start, 0.5),
                RangeItem.END_ELEVATION, Estimate.around(end, 0.5)));
    assertThat(ofRoute(plain, route)).isEqualTo(expected == null ? List.of() : List.of(expected));
  }

  @Test
  void legs_that_contradict_the_route_add_a_caveat() {
    RangeTest plain = Sessions.rangeTest(Map.of());
    RangeTest legs =
        new RangeTest(
            plain.name(), plain.facts(), List.of(leg("out", 120, 90, 60), leg("back", 90, 61, 30)));
    assertThat(ofRoute(legs, "out and back"))
        .containsExactly(
            "The route is stated as out and back, but the legs out add up to 120 km and the legs"
                + " back to 90 km: it was not the same way.");
    assertThat(ofRoute(legs, "one way"))
        .containsExactly(
            "The route is stated as one way, but it has legs called out and legs called back.");
    RangeTest charged =
        new RangeTest(
            plain.name(), plain.facts(), List.of(leg("1", 90, 90, 60), leg("2", 90, 75, 45)));
    assertThat(ofRoute(charged, "loop"))
        .containsExactly(
            "Leg 2 began at 75 %, and the leg before it ended at 60 %: the car was charged"
                + " in between, or one of the two is wrong.");
  }

  private static Leg leg(String name, double kilometres, double from, double to) {
    return new Leg(
        name,
        Estimate.around(kilometres, 0.5),
        Optional.empty(),
        Optional.empty(),
        Optional.of(new Leg.Span(Estimate.around(from, 0.5), Estimate.around(to, 0.5))),
        new RowRef("legs.csv", 2));
  }

  private static List<String> ofRoute(RangeTest plain, String route) {
    Map<RangeItem, Fact> facts = new EnumMap<>(RangeItem.class);
    for (RangeItem item : List.of(RangeItem.START_ELEVATION, RangeItem.END_ELEVATION)) {
      plain.facts().known(item).ifPresent(fact -> facts.put(item, fact));
    }
    RowRef row = new RowRef("range-test.csv", 9);
    facts.put(RangeItem.ROUTE, new Fact(route, "", Optional.empty(), HowKnown.DISPLAYED, row));
    RangeTest stated =
        new RangeTest(
            plain.name(), new Facts<>("range-test.csv", RangeItem.class, facts), plain.legs());
    return RouteCaveats.of(stated, new NumberFormatter(Unit.KILOMETRE)).stream()
        .map(c -> c.sentence().replace('\u00a0', ' '))
        .toList();
  }
}
