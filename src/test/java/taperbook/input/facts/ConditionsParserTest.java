package taperbook.input.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static taperbook.input.Given.CONDITIONS;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.input.Given;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.session.ConditionItem;
import taperbook.session.DisplayRounding;
import taperbook.session.Fact;
import taperbook.session.Facts;
import taperbook.session.HowKnown;
import taperbook.session.RowRef;
import taperbook.session.RowsWritten;
import taperbook.session.Session;

final class ConditionsParserTest {
  private static final String READINGS = "elapsed [s],soc [%]\n0,10\n1,11\n";

  @Test
  void facts_keep_their_text_and_row() {
    Facts<ConditionItem> facts = facts(CONDITIONS + "remarks,\"late, cold\",,estimated\n");
    Fact odometer = facts.known(ConditionItem.ODOMETER).orElseThrow();
    assertThat(odometer.written()).isEqualTo("12000");
    assertThat(odometer.unit()).isEqualTo("km");
    assertThat(odometer.howKnown()).isEqualTo(HowKnown.DISPLAYED);
    assertThat(odometer.row()).isEqualTo(new RowRef("c.csv", 4));
    assertThat(odometer.amount().orElseThrow().bounds()).isEqualTo(new Interval(11999.5, 12000.5));
    assertThat(facts.text(ConditionItem.REMARKS)).contains("late, cold");
    assertThat(facts.all().get(ConditionItem.REMARKS))
        .extracting(Fact::howKnown)
        .isEqualTo(HowKnown.ESTIMATED);
  }

  @Test
  void amounts_are_converted_with_their_bounds() {
    Facts<ConditionItem> facts =
        facts(CONDITIONS.replace("12000,km", "7456.5,mi").replace("12,Cel", "53,degF"));
    assertThat(facts.amount(ConditionItem.ODOMETER).orElseThrow().value())
        .isCloseTo(7456.5 * 1.609344, within(1e-9));
    assertThat(facts.amount(ConditionItem.ODOMETER).orElseThrow().bounds().width())
        .isCloseTo(0.1609344, within(1e-9));
    assertThat(facts.amount(ConditionItem.AMBIENT_TEMPERATURE).orElseThrow().value())
        .isCloseTo(21 / 1.8, within(1e-12));
  }

  @Test
  void an_unknown_item_is_a_fact_without_a_value() {
    Facts<ConditionItem> facts =
        facts(CONDITIONS.replace("preconditioned,yes,,", "preconditioned,Unknown,,"));
    for (ConditionItem item :
        List.of(ConditionItem.PRECONDITIONED, ConditionItem.BATTERY_TEMPERATURE_AT_START)) {
      assertThat(facts.all().get(item)).returns("", Fact::written).returns(false, Fact::isKnown);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "display rounds,not known,,",
        "display rounds,Not  Known,,unknown",
        "display rounds,,,unknown",
        "display rounds,unknown,,",
        "display rounds,,,",
        "vehicle rated peak power,not known,kW,"
      })
  void not_known_is_a_synonym_of_unknown(String row) {
    Session session = Given.good(Given.session(READINGS, CONDITIONS + row + "\n"));
    assertThat(session.displayRounding()).isEqualTo(DisplayRounding.NOT_KNOWN);
    assertThat(session.conditions().all().values().stream().filter(f -> f.row().line() == 10))
        .allMatch(f -> !f.isKnown());
  }

  @Test
  void rounding_habit_places_and_lag_are_parsed() {
    Session session =
        Given.good(
            Given.session(
                READINGS,
                CONDITIONS
                    + """
                    display rounds,down,,displayed
                    rows written,at changes,,
                    power measured at,station,,
                    energy counted at,inlet,,
                    heating included,no,,estimated
                    display lag,0.5,min,estimated
                    """));
    assertThat(session.displayRounding()).isEqualTo(DisplayRounding.DOWN);
    assertThat(session.rowsWritten()).isEqualTo(RowsWritten.AT_CHANGES);
    Facts<ConditionItem> facts = session.conditions();
    assertThat(facts.text(ConditionItem.POWER_MEASURED_AT)).contains("station");
    assertThat(facts.text(ConditionItem.ENERGY_COUNTED_AT)).contains("inlet");
    assertThat(facts.text(ConditionItem.HEATING_INCLUDED)).contains("no");
    assertThat(facts.amount(ConditionItem.DISPLAY_LAG).orElseThrow())
        .isEqualTo(new Estimate(30, new Interval(27, 33)));
  }

  @Test
  void a_tolerance_replaces_half_the_last_digit() {
    Facts<ConditionItem> facts =
        facts(
            """
            give or take,item,value,unit,how known
            ,date,2026-03-14,,
            ,vehicle,Northmoor Finch,,
            25,odometer,12000,km,displayed
            0,station rated power,200,kW,displayed
            4,ambient temperature,55,degF,measured
            ,battery temperature at start,27,Cel,displayed
            ,preconditioned,yes,,
            ,read from,film,,
            0.02,price per kWh,0.59,EUR/kWh,displayed
            3,preconditioning time,2,min,estimated
            """);
    assertThat(facts.amount(ConditionItem.ODOMETER).orElseThrow().bounds())
        .isEqualTo(new Interval(11975, 12025));
    assertThat(facts.known(ConditionItem.ODOMETER).orElseThrow().giveOrTake()).isEqualTo("25");
    assertThat(facts.amount(ConditionItem.STATION_RATED_POWER).orElseThrow().bounds())
        .isEqualTo(Interval.exactly(200));
    // A difference of 1 degF is 5/9 K: NIST SP 811 (2008), appendix B.8.
    Estimate air = facts.amount(ConditionItem.AMBIENT_TEMPERATURE).orElseThrow();
    assertThat(air.bounds().high() - air.value()).isCloseTo(4 * 5 / 9.0, within(1e-12));
    assertThat(air.value() - air.bounds().low()).isCloseTo(4 * 5 / 9.0, within(1e-12));
    Fact battery = facts.known(ConditionItem.BATTERY_TEMPERATURE_AT_START).orElseThrow();
    assertThat(battery.amount().orElseThrow().bounds()).isEqualTo(new Interval(26.5, 27.5));
    assertThat(battery.giveOrTake()).isEmpty();
    assertThat(facts.amount(ConditionItem.PRICE_PER_KWH).orElseThrow().bounds().high())
        .isCloseTo(0.61, within(1e-12));
    // A duration is not negative, regardless of its tolerance.
    assertThat(facts.amount(ConditionItem.PRECONDITIONING_TIME).orElseThrow().bounds())
        .isEqualTo(new Interval(0, 300));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "odometer,12000,km,displayed,-1|\"-1\"; expected a give or take from 0 to 2000000 km for"
            + " odometer. To fix: write what the value may be off by, in the unit of the value."
            + " [value-out-of-range]",
        "ambient temperature,12,degF,measured,400|\"400\"; expected a give or take from 0 to 324"
            + " degF for ambient temperature. To fix: write what the value may be off by, in the"
            + " unit of the value. [value-out-of-range]",
        "station rated power,200,kW,displayed,200|\"200\"; expected a give or take from 0 to less"
            + " than the value for station rated power. To fix: write what the value may be off"
            + " by, in the unit of the value. [value-out-of-range]",
        "session fee,1,EUR,displayed,1001|\"1001\"; expected a give or take from 0 to 1000 for"
            + " session fee. To fix: write what the value may be off by, in the unit of the value."
            + " [value-out-of-range]",
        "odometer,12000,km,displayed,some|\"some\"; expected a give or take from 0 to 2000000 km"
            + " for odometer. To fix: write a plain number, as in 57.6, or leave the cell empty."
            + " [value-not-understood]",
        "odometer,12000,km,displayed,5 km|\"5 km\"; expected a give or take from 0 to 2000000 km"
            + " for odometer. To fix: write the number alone; the unit is in the unit column."
            + " [value-not-understood]",
        "preconditioned,yes,,displayed,1|\"1\"; expected an empty cell, as the value is no amount,"
            + " for preconditioned. To fix: empty the cell. [value-not-understood]",
        "date,2026-03-14,,,1|\"1\"; expected an empty cell, as the value is no amount, for date."
            + " To fix: empty the cell. [value-not-understood]",
        "vehicle,Finch,,,1|\"1\"; expected an empty cell, as the value is no amount, for vehicle."
            + " To fix: empty the cell. [value-not-understood]",
        "odometer,,km,unknown,5|\"5\"; expected an empty cell, as there is no value, for odometer."
            + " To fix: write the value, or empty the cell. [known-contradiction]",
        "model year,,,,5|\"5\"; expected an empty cell, as there is no value, for model"
            + " year. To fix: write the value, or empty the cell. [known-contradiction]",
      })
  void invalid_tolerances_are_reported(String row, String expected) {
    String item = row.substring(0, row.indexOf(','));
    String conditions = without(item).replace("how known", "how known,give or take") + row + "\n";
    int line = (int) conditions.lines().count();
    assertThat(problems(conditions)).containsExactly("c.csv:" + line + ":5: found " + expected);
  }

  @Test
  void an_empty_how_known_of_a_word_or_date_is_not_stated() {
    Facts<ConditionItem> facts =
        facts(CONDITIONS + "price per kWh,0.59,EUR/kWh,\ncurrency,EUR,,\nplace,Quarry Lane,,\n");
    for (ConditionItem item :
        List.of(
            ConditionItem.DATE,
            ConditionItem.PRECONDITIONED,
            ConditionItem.PRICE_PER_KWH,
            ConditionItem.PLACE)) {
      assertThat(facts.known(item).orElseThrow().howKnown()).isEqualTo(HowKnown.NOT_STATED);
    }
    assertThat(facts.amount(ConditionItem.PRICE_PER_KWH).orElseThrow().value()).isEqualTo(0.59);
  }

  @Test
  void words_and_dates_may_be_noted_and_amounts_may_not() {
    assertThat(facts(CONDITIONS + "place,Quarry Lane,,noted\n").known(ConditionItem.PLACE))
        .get()
        .extracting(f -> f.howKnown())
        .isEqualTo(HowKnown.NOTED);
    assertThat(problems(CONDITIONS + "preconditioning time,4,min,noted\n"))
        .singleElement()
        .asString()
        .contains(
            ":4: found \"noted\", which is for words and dates; expected one of measured, displayed,"
                + " from the maker, estimated, unknown for preconditioning time. To fix: write"
                + " where the amount came from. [how-known-not-understood]");
    assertThat(problems(CONDITIONS + "place,Quarry Lane,,not stated\n"))
        .singleElement()
        .asString()
        .contains(
            "one of measured, displayed, from the maker, estimated, noted, unknown for place");
  }

  @Test
  void optional_item_that_is_not_filled_in_is_not_stated() {
    assertThat(facts(CONDITIONS + "model year,,,\n").all())
        .doesNotContainKey(ConditionItem.MODEL_YEAR);
  }

  @Test
  void columns_items_and_words_accept_any_order_letter_case_and_spaces() {
    Facts<ConditionItem> facts =
        facts(
            CONDITIONS
                .replace("item,value,unit,how known", "Item , VALUE,unit, How  Known")
                .replace("preconditioned,yes,,", "PRECONDITIONED, YES ,, Measured "));
    assertThat(facts.text(ConditionItem.PRECONDITIONED)).contains("yes");
    String reordered =
        """
        how known\tunit\tvalue\titem
        \t\t2026-03-14\tdate
        \t\tFinch\tvehicle
        displayed\tkm\t12000,5\todometer
        unknown\t\t\tstation rated power
        unknown\t\t\tambient temperature
        unknown\t\t\tbattery temperature at start
        \t\tno\tpreconditioned
        \t\tby  eye\tread from
        """;
    assertThat(facts(reordered).amount(ConditionItem.ODOMETER).orElseThrow().value())
        .isEqualTo(12000.5);
    assertThat(facts(reordered).text(ConditionItem.READ_FROM)).contains("by eye");
  }

  @Test
  void an_unknown_item_is_refused_with_the_nearest_one() {
    assertThat(problems(CONDITIONS + "softwear version,12,,\n"))
        .containsExactly(
            "c.csv:10:1: found \"softwear version\"; expected an item of this file. To fix: write"
                + " \"software version\". [item-unknown]");
    assertThat(problems(CONDITIONS + "weather,fine,,\n"))
        .containsExactly(
            "c.csv:10:1: found \"weather\"; expected an item of this file. To fix: remove"
                + " the row, or write one of the items not yet used: place, model year, station"
                + " shared, vehicle rated peak power, preconditioning time, battery usable energy,"
                + " software version, state of charge resolution, power resolution, energy"
                + " resolution, clock resolution, price per kWh, price per minute, session fee,"
                + " currency, display rounds, rows written, power measured at, energy counted at,"
                + " heating included, display lag, arrived, plugged in, first power, unplugged,"
                + " left, remarks. [item-unknown]");
    assertThat(problems(CONDITIONS + ",fine,,\n").get(0))
        .startsWith("c.csv:10:1: found a row without an item; expected an item of this file.");
  }

  @Test
  void missing_item_is_reported_with_the_row_to_add() {
    assertThat(problems(without("battery temperature at start", "date")))
        .containsExactly(
            "c.csv: found no row for date; expected a row for each item that is required, even if it"
                + " is not known. To fix: add the row \"date,,,unknown\" or the value instead of"
                + " unknown. [item-missing]",
            "c.csv: found no row for battery temperature at start; expected a row for each item that"
                + " is required, even if it is not known. To fix: add the row \"battery temperature"
                + " at start,,Cel,unknown\" or the value instead of unknown. [item-missing]");
    assertThat(problems("how known;item;unit;value;x\nunknown;date;;;\n"))
        .anyMatch(p -> p.contains("add the row \"unknown;odometer;km;\" or"));
  }

  @Test
  void required_item_that_is_not_filled_in_is_missing() {
    assertThat(problems(CONDITIONS.replace("read from,film,,", "read from,,,")))
        .containsExactly(
            "c.csv:9:2: found no value and no word how it is known; expected a value for read from,"
                + " or the word unknown under how known. To fix: write the value and how it is"
                + " known, or unknown. [item-missing]");
  }

  @Test
  void duplicate_item_is_refused() {
    assertThat(problems(CONDITIONS + "Vehicle,Other,,\n"))
        .containsExactly(
            "c.csv:10:1: found \"Vehicle\" as on line 3; expected each item once. To fix:"
                + " remove one of the two rows. [item-twice]");
  }

  @Test
  void missing_columns_are_reported() {
    assertThat(problems("item,value,known\ndate,2026-03-14,measured\n"))
        .filteredOn(p -> !p.contains("column-ignored"))
        .containsExactly(
            "c.csv:1: found the columns \"item\", \"value\", \"known\"; expected a column \"unit\"."
                + " To fix: add the column. [column-missing]",
            "c.csv:1: found the columns \"item\", \"value\", \"known\"; expected a column \"how"
                + " known\". To fix: add the column. [column-missing]");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "date,14.3.2026,,|2|\"14.3.2026\"; expected a day in ISO 8601, as in 2026-03-14, for date."
            + " To fix: write year, month and day in that form. [value-not-understood]",
        "preconditioned,maybe,,|2|\"maybe\"; expected one of the words yes, no, unknown for"
            + " preconditioned. To fix: write one of these words. [value-not-understood]",
        "read from,flim,,|2|\"flim\"; expected one of the words film, log, by eye, unknown for read"
            + " from. To fix: write film. [value-not-understood]",
        "display rounds,downwards,,|2|\"downwards\"; expected one of the words nearest, down, up,"
            + " not known, unknown for display rounds. To fix: write one of these words."
            + " [value-not-understood]",
        "rows written,at change,,|2|\"at change\"; expected one of the words at changes, at set"
            + " times, mixed, not known, unknown for rows written. To fix: write at changes."
            + " [value-not-understood]",
        "display lag,11,min,displayed|2|\"11\"; expected a number from 0 to 10 min for display lag."
            + " To fix: correct the value, or its unit. [value-out-of-range]",
        "odometer,n/a,km,displayed|2|\"n/a\"; expected a number from 0 to 2000000 km for odometer."
            + " To fix: leave the value empty and write unknown under how known."
            + " [value-not-understood]",
        "ambient temperature,12 Cel,Cel,measured|2|\"12 Cel\"; expected a number from -60 to 120 Cel"
            + " for ambient temperature. To fix: write the number alone; the unit is in the"
            + " unit column. [value-not-understood]",
        "ambient temperature,-100,degF,measured|2|\"-100\"; expected a number from -76 to 248 degF"
            + " for ambient temperature. To fix: correct the value, or its unit."
            + " [value-out-of-range]",
        "power resolution,0,kW,displayed|2|\"0\"; expected a number above 0 and up to 50 kW for"
            + " power resolution. To fix: correct the value, or its unit. [value-out-of-range]",
        "odometer,12000,miles,displayed|3|\"miles\"; expected one of the units km, mi for odometer."
            + " To fix: write mi. [unit-not-understood]",
        "odometer,12000,,displayed|3|no unit; expected one of the units km, mi for odometer."
            + " To fix: write the one that the value is in. [unit-not-understood]",
        "state of charge resolution,1,,displayed|3|no unit; expected the unit % for state of charge"
            + " resolution. To fix: write % in the unit cell. [unit-not-understood]",
        "place,Quarry Lane,m,|3|\"m\"; expected no unit for place. To fix: empty the unit cell."
            + " [unit-not-understood]",
        "price per kWh,0.59,Euro/kWh,|3|\"Euro/kWh\"; expected three capitals of ISO 4217 and /kWh,"
            + " as in EUR/kWh, for price per kWh. To fix: write the unit in that form."
            + " [unit-not-understood]",
        "session fee,1,,|3|no unit; expected three capitals of ISO 4217, as in EUR, for session fee."
            + " To fix: write the unit in that form. [unit-not-understood]",
        "price per minute,-1,EUR/min,|2|\"-1\"; expected a price from 0 to 1000 for price per"
            + " minute. To fix: correct the value, or its unit. [value-out-of-range]",
        "currency,Euro,,|2|\"Euro\"; expected three capitals of ISO 4217, as in EUR, for currency."
            + " To fix: write the currency in that form. [value-not-understood]",
        "odometer,12000,km,display|4|\"display\"; expected one of measured, displayed, from the"
            + " maker, estimated, unknown for odometer. To fix: write displayed."
            + " [how-known-not-understood]",
        "odometer,12000,km,guess|4|\"guess\"; expected one of measured, displayed, from the maker,"
            + " estimated, unknown for odometer. To fix: write one of these words."
            + " [how-known-not-understood]",
        "odometer,12000,km,|4|an empty cell; expected one of measured, displayed, from the maker,"
            + " estimated, unknown for odometer. To fix: write how the value is known."
            + " [how-known-not-understood]",
        "odometer,,km,measured|4|no value with \"measured\"; expected a value with a word how it is"
            + " known, or an empty value with unknown, for odometer. To fix: write the value, or"
            + " unknown. [known-contradiction]",
        "odometer,12000,km,unknown|4|\"12000\" with \"unknown\"; expected a value with a"
            + " word how it is known, or an empty value with unknown, for odometer. To fix:"
            + " remove the value, or write how it is known. [known-contradiction]",
        "rows written,not known,,measured|4|\"not known\" with \"measured\"; expected a"
            + " value with a word how it is known, or an empty value with unknown, for rows"
            + " written. To fix: write the value, or unknown. [known-contradiction]",
        "preconditioned,unknown,,displayed|4|\"unknown\" with \"displayed\"; expected a"
            + " value with a word how it is known, or an empty value with unknown, for"
            + " preconditioned. To fix: write the value, or unknown. [known-contradiction]",
      })
  void invalid_values_of_every_kind_are_reported(String row, int cell, String expected) {
    String item = row.substring(0, row.indexOf(','));
    String conditions = without(item) + row + "\n";
    int line = (int) conditions.lines().count();
    assertThat(problems(conditions))
        .containsExactly("c.csv:" + line + ":" + cell + ": found " + expected);
  }

  @Test
  void prices_agree_with_the_currency() {
    assertThat(problems(CONDITIONS + "currency,EUR,,\nprice per kWh,0.59,GBP/kWh,\n"))
        .containsExactly(
            "c.csv:11:3: found \"GBP/kWh\"; expected the currency EUR as on line 10. To fix: write"
                + " all prices in one currency. [facts-contradict]");
    assertThat(problems(CONDITIONS + "session fee,1,EUR,\nprice per kWh,0.59,GBP/kWh,\n"))
        .containsExactly(
            "c.csv:10:3: found \"EUR\"; expected the currency GBP as on line 11. To fix: write all"
                + " prices in one currency. [facts-contradict]");
  }

  private static Facts<ConditionItem> facts(String conditions) {
    return Given.good(Given.session(READINGS, conditions)).conditions();
  }

  private static List<String> problems(String conditions) {
    assertThat(Given.session(READINGS, conditions).isUsable()).isFalse();
    return Given.sentences(Given.session(READINGS, conditions));
  }

  /** Valid conditions without the rows of some items. */
  private static String without(String... items) {
    StringBuilder kept = new StringBuilder();
    CONDITIONS
        .lines()
        .filter(line -> List.of(items).stream().noneMatch(i -> line.startsWith(i + ",")))
        .forEach(line -> kept.append(line).append('\n'));
    return kept.toString();
  }
}
