package taperbook.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import taperbook.input.cell.ColumnSpec;
import taperbook.input.facts.FactsParser;
import taperbook.input.facts.LegsParser;
import taperbook.input.readings.ReadingsParser;
import taperbook.input.readings.TimeColumn;
import taperbook.session.Channel;
import taperbook.session.HowKnown;

/** The possible columns of each file, with their descriptions; the checks use the same lists. */
public final class KnownColumns {
  private static final String NOTE =
      "Anything worth knowing of this row; a note that begins with pause says that charging stood"
          + " still.";
  private static final String AS_READ =
      "Of a reading that was looked at again: confirmed, or doubtful, which leaves it out; of the whole"
          + " row, or of the columns named after it, such as doubtful power and soc.";
  private static final Map<String, String> LEGS =
      Map.of(
          LegsParser.LEG, "What the leg is called, such as lap 1.",
          LegsParser.DISTANCE, "Distance of the leg.",
          LegsParser.DURATION, "Time that the leg took.",
          LegsParser.ENERGY_USED, "Energy that the car says it used in the leg.",
          LegsParser.START_SOC, "State of charge at the start of the leg.",
          LegsParser.END_SOC, "State of charge at its end.",
          LegsParser.NOTE, NOTE);
  private static final Map<String, String> FACTS =
      Map.of(
          FactsParser.ITEM, "Name of the item.",
          FactsParser.VALUE, "Its value; empty if it is not known.",
          FactsParser.UNIT, "Unit of the value; empty if it has none.",
          FactsParser.GIVE_OR_TAKE,
              "What an amount may be off by, in its unit; half its last digit if this is empty, or"
                  + " if there is no such column.",
          FactsParser.HOW_KNOWN,
              "How you know it: "
                  + String.join(", ", HowKnown.written().stream().map(HowKnown::words).toList())
                  + ". Words and dates may be noted, or leave the cell empty.");

  private KnownColumns() {}

  /** Returns the columns of {@code readings.csv}. */
  public static List<KnownColumn> readings() {
    List<KnownColumn> columns = new ArrayList<>();
    columns.add(
        KnownColumn.of(
            ColumnSpec.elapsed(TimeColumn.ELAPSED), "Time since plugging in; never goes back."));
    columns.add(
        KnownColumn.of(TimeColumn.clockSpec(), "Clock time, in place of the elapsed time."));
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
