package taperbook.check.foreign;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import taperbook.check.cell.QuantityRange;
import taperbook.check.readings.ChannelRange;
import taperbook.model.Channel;
import taperbook.model.Unit;

/**
 * Guesses which channels a column of numbers may be, by the words of its head and by its numbers.
 * Words are those of the trade in English and German; no source.
 */
final class ChannelGuess {
  private static final Map<Channel, Set<String>> WORDS =
      Map.of(
          Channel.SOC, Set.of("soc", "akkustand", "charge", "level", "ladestand"),
          Channel.POWER, Set.of("power", "pwr", "leistung", "ladeleistung"),
          Channel.ENERGY_ADDED, Set.of("energy", "added", "energie", "charged", "counter"),
          Channel.BATTERY_TEMPERATURE, Set.of("temperature", "temp", "temperatur", "tbat", "tbatt"),
          Channel.VOLTAGE, Set.of("voltage", "volt", "volts", "spannung", "u"),
          Channel.CURRENT, Set.of("current", "amps", "amp", "strom", "i"),
          Channel.RANGE_SHOWN, Set.of("range", "reichweite"));

  private static final Map<String, String> UNIT_WORDS =
      Map.ofEntries(
          Map.entry("%", "%"),
          Map.entry("pct", "%"),
          Map.entry("percent", "%"),
          Map.entry("prozent", "%"),
          Map.entry("kw", "kW"),
          Map.entry("w", "W"),
          Map.entry("watt", "W"),
          Map.entry("kwh", "kWh"),
          Map.entry("wh", "Wh"),
          Map.entry("c", "Cel"),
          Map.entry("\u00b0c", "Cel"),
          Map.entry("degc", "Cel"),
          Map.entry("celsius", "Cel"),
          Map.entry("f", "degF"),
          Map.entry("\u00b0f", "degF"),
          Map.entry("degf", "degF"),
          Map.entry("v", "V"),
          Map.entry("a", "A"),
          Map.entry("km", "km"),
          Map.entry("mi", "mi"),
          Map.entry("miles", "mi"));

  private static final Set<String> STATION_WORDS =
      Set.of("station", "charger", "evse", "dispenser", "grid", "meter");
  private static final Set<String> OTHER_TEMPERATURES =
      Set.of("ambient", "outside", "outdoor", "cabin", "motor", "inverter", "air");

  private static final int NAME_POINTS = 10;
  private static final int UNIT_POINTS = 6;
  private static final int SHAPE_POINTS = 2;

  /** A power above this in kW is more likely one in W; the greatest stations give 1 MW. */
  private static final double MOST_KILOWATTS = 1500;

  private static final double MOST_KILOWATT_HOURS = 1000;

  private ChannelGuess() {}

  /** Each channel that the column may be, with how much speaks for it. */
  static List<GuessedRow> of(ForeignColumn column) {
    List<GuessedRow> rows = new ArrayList<>();
    if (column.isNumeric()) {
      Arrays.stream(Channel.values()).forEach(c -> guess(column, c).ifPresent(rows::add));
    }
    return rows;
  }

  private static Optional<GuessedRow> guess(ForeignColumn column, Channel channel) {
    List<String> words = column.words();
    boolean station = words.stream().anyMatch(STATION_WORDS::contains);
    boolean ofStation = channel == Channel.STATION_ENERGY || channel == Channel.STATION_POWER;
    Optional<String> unit =
        words.stream()
            .filter(UNIT_WORDS::containsKey)
            .map(UNIT_WORDS::get)
            .reduce((first, last) -> last);
    boolean unitFits =
        unit.isPresent()
            && Unit.ofSymbol(unit.get())
                .filter(u -> u.quantity() == channel.quantity())
                .isPresent();
    boolean named = words.stream().anyMatch(w -> isNamed(w, names(channel)));
    if ((!named && !unitFits)
        || (unit.isPresent() && !unitFits)
        || (ofStation && !station)
        || (channel == Channel.BATTERY_TEMPERATURE
            && words.stream().anyMatch(OTHER_TEMPERATURES::contains))) {
      return Optional.empty();
    }
    int points =
        (named ? NAME_POINTS : 0)
            + (unitFits ? UNIT_POINTS : 0)
            + (shapeFits(column, channel) ? SHAPE_POINTS : 0)
            + (ofStation ? NAME_POINTS : 0);
    String stated = unitFits ? unit.orElseThrow() : "";
    return Optional.of(scaled(column, channel, stated, points))
        .filter(r -> fits(column, r, channel));
  }

  /** True if a word is one of the names, or a compound that ends in a long one. */
  private static boolean isNamed(String word, Set<String> names) {
    return names.contains(word)
        || names.stream().anyMatch(name -> name.length() >= 5 && word.endsWith(name));
  }

  private static Set<String> names(Channel channel) {
    return WORDS.getOrDefault(
        switch (channel) {
          case STATION_ENERGY -> Channel.ENERGY_ADDED;
          case STATION_POWER -> Channel.POWER;
          default -> channel;
        },
        Set.of());
  }

  private static boolean shapeFits(ForeignColumn column, Channel channel) {
    return switch (channel) {
      case SOC, ENERGY_ADDED, STATION_ENERGY, RANGE_SHOWN ->
          column.risingShare() > 0.95 && column.last() > column.first();
      default -> column.risingShare() < 0.95;
    };
  }

  private static GuessedRow scaled(
      ForeignColumn column, Channel channel, String stated, int points) {
    double size = Math.max(Math.abs(column.least()), Math.abs(column.greatest()));
    String base = Unit.base(channel.quantity()).symbol();
    String unit = stated.isEmpty() ? base : stated;
    GuessedRow row = GuessedRow.of(channel.columnName(), column.index(), unit, points);
    return switch (channel) {
      case SOC -> stated.isEmpty() && size <= 1 ? row.withFactor("100") : row;
      case POWER, STATION_POWER, CURRENT -> {
        boolean watts = channel != Channel.CURRENT && stated.isEmpty() && size > MOST_KILOWATTS;
        GuessedRow signed = column.negativeShare() > 0.5 ? row.withFactor("-1") : row;
        yield watts
            ? new GuessedRow(
                signed.item(), signed.index(), "W", signed.factor(), "", "", signed.points())
            : signed;
      }
      case ENERGY_ADDED, STATION_ENERGY -> energy(column, row, stated, size);
      default -> row;
    };
  }

  private static GuessedRow energy(
      ForeignColumn column, GuessedRow row, String stated, double size) {
    boolean fromZero = column.first() <= 0.02 * column.greatest();
    boolean wattHours = stated.isEmpty() && fromZero && size > MOST_KILOWATT_HOURS;
    GuessedRow inUnit =
        wattHours ? GuessedRow.of(row.item(), row.index(), "Wh", row.points()) : row;
    return fromZero ? inUnit : inUnit.withOffset(EntryReader.LESS_FIRST);
  }

  /** True if the scaled numbers lie within what the channel can show. */
  private static boolean fits(ForeignColumn column, GuessedRow row, Channel channel) {
    double factor = row.factor().isEmpty() ? 1 : Double.parseDouble(row.factor());
    double less = row.offset().isEmpty() ? 0 : column.first();
    Unit unit = Unit.ofSymbol(row.unit()).orElseThrow();
    double one = unit.toBase(factor * (column.least() - less));
    double other = unit.toBase(factor * (column.greatest() - less));
    QuantityRange range = ChannelRange.of(channel);
    return range.contains(one) && range.contains(other);
  }
}
