package taperbook.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import taperbook.i18n.Texts;
import taperbook.input.cell.ColumnSpec;
import taperbook.input.facts.FactsParser;
import taperbook.input.facts.LegsParser;
import taperbook.input.readings.ReadingsParser;
import taperbook.input.readings.TimeColumn;
import taperbook.session.Channel;
import taperbook.session.HowKnown;

/** The possible columns of each file, with their descriptions; the checks use the same lists. */
public final class KnownColumns {
  private static final String NOTE = Texts.of("input.known_columns.anything_worth_knowing_of_this");
  private static final String AS_READ = Texts.of("input.known_columns.of_reading_that_was_looked");
  private static final Map<String, String> LEGS =
      Map.of(
          LegsParser.LEG, Texts.of("input.known_columns.what_leg_is_called_such"),
          LegsParser.DISTANCE, Texts.of("input.known_columns.distance_of_leg"),
          LegsParser.DURATION, Texts.of("input.known_columns.time_that_leg_took"),
          LegsParser.ENERGY_USED, Texts.of("input.known_columns.energy_that_car_says_it"),
          LegsParser.START_SOC, Texts.of("input.known_columns.state_of_charge_at_start"),
          LegsParser.END_SOC, Texts.of("input.known_columns.state_of_charge_at_its"),
          LegsParser.NOTE, NOTE);
  private static final Map<String, String> FACTS =
      Map.of(
          FactsParser.ITEM, Texts.of("input.known_columns.name_of_item"),
          FactsParser.VALUE, Texts.of("input.known_columns.its_value_empty_if_it"),
          FactsParser.UNIT, Texts.of("input.known_columns.unit_of_value_empty_if"),
          FactsParser.GIVE_OR_TAKE, Texts.of("input.known_columns.what_amount_may_be_off"),
          FactsParser.HOW_KNOWN,
              Texts.of(
                  "input.known_columns.how_you_know_it_words",
                  String.join(", ", HowKnown.written().stream().map(HowKnown::words).toList())));

  private KnownColumns() {}

  /** Returns the columns of {@code readings.csv}. */
  public static List<KnownColumn> readings() {
    List<KnownColumn> columns = new ArrayList<>();
    columns.add(
        KnownColumn.of(
            ColumnSpec.elapsed(TimeColumn.ELAPSED),
            Texts.of("input.known_columns.time_since_plugging_in_never")));
    columns.add(
        KnownColumn.of(
            TimeColumn.clockSpec(), Texts.of("input.known_columns.clock_time_in_place_of")));
    for (Channel channel : Channel.values()) {
      columns.add(
          KnownColumn.of(
              ColumnSpec.of(channel.columnName(), channel.quantity()), channel.explanation()));
    }
    columns.add(KnownColumn.of(ColumnSpec.plain(ReadingsParser.NOTE), NOTE));
    columns.add(KnownColumn.of(ColumnSpec.plain(ReadingsParser.AS_READ), AS_READ));
    return columns;
  }

  /** Returns the columns of {@code legs.csv}. */
  public static List<KnownColumn> legs() {
    return explained(LegsParser.SPECS, LEGS);
  }

  /** Returns the columns of {@code conditions.csv} and {@code range-test.csv}. */
  public static List<KnownColumn> facts() {
    return explained(FactsParser.COLUMN_NAMES.stream().map(ColumnSpec::plain).toList(), FACTS);
  }

  private static List<KnownColumn> explained(List<ColumnSpec> specs, Map<String, String> texts) {
    return specs.stream()
        .map(s -> KnownColumn.of(s, Optional.ofNullable(texts.get(s.name())).orElseThrow()))
        .toList();
  }
}
