package taperbook.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static taperbook.input.Given.RANGE_TEST;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.quantity.Estimate;
import taperbook.session.Facts;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;

final class RangeTestParserTest {
  @Test
  void a_record_is_converted_to_facts_in_base_units() {
    RangeTest test = Given.good(Given.rangeTest(RANGE_TEST));
    assertThat(test.name()).isEqualTo("t");
    assertThat(test.vehicle()).isEqualTo("Northmoor Finch");
    assertThat(test.legs()).isEmpty();
    assertThat(test.facts().amount(RangeItem.DISTANCE).orElseThrow().value())
        .isCloseTo(456.4099584, within(1e-9));
    assertThat(test.facts().amount(RangeItem.AMBIENT_TEMPERATURE).orElseThrow().value())
        .isCloseTo(10, within(1e-12));
  }

  /** 1000 / 1.609344 / 4.1 = 151.5539... Wh/km; the bounds are those of 4.15 and 4.05. */
  @Test
  void a_reciprocal_consumption_exchanges_its_bounds() {
    Estimate consumption =
        facts("consumption displayed,4.1,mi/kWh,displayed")
            .amount(RangeItem.CONSUMPTION_DISPLAYED)
            .orElseThrow();
    assertThat(consumption.value()).isCloseTo(151.553949, within(1e-6));
    assertThat(consumption.bounds().low()).isCloseTo(149.727998, within(1e-6));
    assertThat(consumption.bounds().high()).isCloseTo(153.424986, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({
    "1.023,1,1.023,1.0225,1.0235",
    "2.3,%,1.023,1.0225,1.0235",
    "-20,%,0.8,0.795,0.805",
    "0.80,1,0.8,0.795,0.805"
  })
  void a_correction_is_converted_to_a_factor(
      String value, String unit, double factor, double low, double high) {
    Estimate correction =
        facts("odometer correction," + value + "," + unit + ",measured")
            .amount(RangeItem.ODOMETER_CORRECTION)
            .orElseThrow();
    assertThat(correction.value()).isCloseTo(factor, within(1e-12));
    assertThat(correction.bounds().low()).isCloseTo(low, within(1e-12));
    assertThat(correction.bounds().high()).isCloseTo(high, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "1,1,0.01,1,0.99,1.01",
    "1,1,0,1,1,1",
    "1.0,1,0.1,1,0.9,1.1",
    "0.8,%,0.2,1.008,1.006,1.01",
    "-19,%,2,0.81,0.8,0.83"
  })
  void a_correction_may_state_a_tolerance(
      String value, String unit, String half, double factor, double low, double high) {
    Estimate correction =
        withTolerance("odometer correction," + value + "," + unit + ",measured," + half)
            .amount(RangeItem.ODOMETER_CORRECTION)
            .orElseThrow();
    assertThat(correction.value()).isCloseTo(factor, within(1e-12));
    assertThat(correction.bounds().low()).isCloseTo(low, within(1e-12));
    assertThat(correction.bounds().high()).isCloseTo(high, within(1e-12));
  }

  /** One mile is 1.609344 km, so that 4 and 4.2 mi/kWh are 155.342798 and 147.945522 Wh/km. */
  @Test
  void a_tolerance_of_a_reciprocal_consumption_exchanges_its_bounds() {
    Estimate consumption =
        withTolerance("consumption displayed,4.1,mi/kWh,displayed,0.1")
            .amount(RangeItem.CONSUMPTION_DISPLAYED)
            .orElseThrow();
    assertThat(consumption.bounds().low()).isCloseTo(147.945522, within(1e-6));
    assertThat(consumption.bounds().high()).isCloseTo(155.342798, within(1e-6));
  }

  @Test
  void a_wind_direction_in_words_has_no_tolerance() {
    assertThat(
            problems(
                RANGE_TEST.replace("how known", "how known,give or take")
                    + "wind direction to route,head,,,5\n"))
        .containsExactly(
            "t.csv:10:5: found \"5\"; expected an empty cell, as the value is no amount, for wind"
                + " direction to route. To fix: empty the cell. [value-not-understood]");
  }

  private static Facts<RangeItem> withTolerance(String row) {
    return Given.good(
            Given.rangeTest(RANGE_TEST.replace("how known", "how known,give or take") + row + "\n"))
        .facts();
  }

  @Test
  void wind_direction_is_an_angle_or_a_word() {
    assertThat(facts("wind direction to route,Head,,").text(RangeItem.WIND_DIRECTION))
        .contains("head");
    assertThat(facts("wind direction to route,Head,,").amount(RangeItem.WIND_DIRECTION)).isEmpty();
    assertThat(
            facts("wind direction to route,45,deg,estimated")
                .amount(RangeItem.WIND_DIRECTION)
                .orElseThrow()
                .value())
        .isEqualTo(45);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "wind direction to route,sideways,deg,estimated|2|\"sideways\"; expected a number from -360"
            + " to 360 deg, or one of the words head, tail, cross, variable for wind direction to"
            + " route. To fix: write a plain number, as in 57.6, or leave the value empty and write"
            + " unknown under how known. [value-not-understood]",
        "wind direction to route,45,deg,|4|an empty cell; expected one of measured, displayed, from"
            + " the maker, estimated, unknown for wind direction to route. To fix: write how the"
            + " value is known. [how-known-not-understood]",
        "odometer correction,1.3,1,measured|2|\"1.3\"; expected a factor from 0.8 to 1.2 for"
            + " odometer correction. To fix: correct the value, or its unit. [value-out-of-range]",
        "odometer correction,21,%,measured|2|\"21\"; expected an excess from -20 to 20 % for"
            + " odometer correction. To fix: correct the value, or its unit. [value-out-of-range]",
        "odometer correction,1,1,measured|2|\"1\", which by its last digit is a factor"
            + " from 0.5 to 1.5; expected a factor known to 2 % or better for odometer"
            + " correction. To fix: write more digits, as in 1.00, or what it may be off by in"
            + " a column \"give or take\". [digits-too-few]",
        "odometer correction,1.0,1,measured|2|\"1.0\", which by its last digit is a"
            + " factor from 0.95 to 1.05; expected a factor known to 2 % or better for"
            + " odometer correction. To fix: write more digits, as in 1.00, or what it may be"
            + " off by in a column \"give or take\". [digits-too-few]",
        "odometer correction,1e1,%,measured|2|\"1e1\", which by its last digit is a"
            + " factor from 1.05 to 1.15; expected a factor known to 2 % or better for"
            + " odometer correction. To fix: write more digits, as in 1.00, or what it may be"
            + " off by in a column \"give or take\". [digits-too-few]",
        "odometer correction,2,percent,measured|3|\"percent\"; expected one of the units 1, % for"
            + " odometer correction. To fix: write %. [unit-not-understood]",
        "distance,0,mi,displayed|2|\"0\"; expected a number above 0 and up to 1864.1 mi for"
            + " distance. To fix: correct the value, or its unit. [value-out-of-range]",
        "energy used,0,kWh,displayed|2|\"0\"; expected a number above 0 and up to 1000 kWh for"
            + " energy used. To fix: correct the value, or its unit. [value-out-of-range]",
        "average speed,70,mph,measured|3|\"mph\"; expected one of the units km/h, mi/h, m/s for"
            + " average speed. To fix: write mi/h. [unit-not-understood]",
        "consumption displayed,0,mi/kWh,displayed|2|\"0\"; expected a number from 0.4 to 31 mi/kWh"
            + " for consumption displayed. To fix: correct the value, or its unit."
            + " [value-out-of-range]",
        "air pressure,2.5,bar,measured|2|\"2.5\"; expected a number from 0.3 to 1.1 bar for air"
            + " pressure. To fix: correct the value, or its unit. [value-out-of-range]",
      })
  void invalid_values_of_every_kind_are_reported(String row, int cell, String expected) {
    String item = row.substring(0, row.indexOf(','));
    StringBuilder record = new StringBuilder();
    RANGE_TEST
        .lines()
        .filter(line -> !line.startsWith(item + ","))
        .forEach(line -> record.append(line).append('\n'));
    record.append(row).append('\n');
    long line = record.toString().lines().count();
    assertThat(problems(record.toString()))
        .containsExactly("t.csv:" + line + ":" + cell + ": found " + expected);
  }

  @Test
  void a_drive_without_use_of_charge_is_refused() {
    assertThat(problems(RANGE_TEST.replace("end soc,11", "end soc,92")))
        .containsExactly(
            "t.csv:6:2: found end soc \"92\" with start soc \"92\" on line 5; expected a state of"
                + " charge that is lower at the end of the drive than at its start. To fix: correct"
                + " one of the two. [facts-contradict]");
  }

  @Test
  void an_unknown_state_of_charge_contradicts_nothing() {
    String unknown = RANGE_TEST.replace("end soc,11,%,displayed", "end soc,,%,unknown");
    assertThat(Given.good(Given.rangeTest(unknown)).facts().known(RangeItem.END_SOC)).isEmpty();
  }

  private static Facts<RangeItem> facts(String row) {
    return Given.good(Given.rangeTest(RANGE_TEST + row + "\n")).facts();
  }

  private static List<String> problems(String record) {
    assertThat(Given.rangeTest(record).isUsable()).isFalse();
    return Given.sentences(Given.rangeTest(record));
  }

  @Test
  void inputs_of_road_load_are_accepted_in_their_units() {
    RangeTest test =
        Given.good(
            Given.rangeTest(
                Given.RANGE_TEST
                    + "drag area,0.66,m2,estimated\n"
                    + "rolling coefficient,0.009,1,estimated\n"
                    + "vehicle mass,3700,lb,from the maker\n"
                    + "body,Estate,,measured\n"));
    assertThat(test.facts().amount(RangeItem.DRAG_AREA).orElseThrow().value()).isEqualTo(0.66);
    // The pound is exactly 0.45359237 kg.
    assertThat(test.facts().amount(RangeItem.VEHICLE_MASS).orElseThrow().value())
        .isEqualTo(3700 * 0.45359237);
    assertThat(test.facts().text(RangeItem.BODY)).contains("estate");
  }

  @Test
  void an_impossible_rolling_coefficient_is_reported_with_its_range() {
    assertThat(
            Given.sentences(
                Given.rangeTest(Given.RANGE_TEST + "rolling coefficient,0.9,1,estimated\n")))
        .singleElement()
        .asString()
        .contains("expected a number from 0.003 to 0.05 for rolling coefficient");
  }
}
