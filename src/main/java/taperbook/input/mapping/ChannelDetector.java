package taperbook.input.mapping;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import taperbook.input.cell.ColumnHeader;
import taperbook.input.cell.QuantityRange;
import taperbook.input.readings.ChannelRange;
import taperbook.quantity.Unit;
import taperbook.session.Channel;

/**
 * Guesses the channels that a numeric column may contain, from the words of its header and from its
 * numbers. The words are industry terms in English and German; no source.
 */
final class ChannelDetector {
  private static final Map<Channel, Set<String>> WORDS =
      Map.of(
          Channel.SOC, Set.of("charge", "level"),
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

  /** Prefixes of words for objects other than the battery that have a temperature. */
  private static final List<String> OTHER_TEMPERATURES =
      List.of(
          "ambient",
          "outsid",
          "outdoor",
          "out",
          "oat",
          "exter",
          "ext",
          "air",
          "weather",
          "cabin",
          "inside",
          "inter",
          "motor",
          "inverter",
          "coolant",
          "water",
          "inlet",
          "plug",
          "charger",
          "dcdc",
          "oil",
          "brake",
          "tyre",
          "tire",
          "aussen",
          "au\u00dfen",
          "innen",
          "umgebung",
          "luft",
          "wasser");

  /** Prefixes of words for the battery and its parts. */
  private static final List<String> BATTERY_WORDS =
      List.of("batt", "cell", "zell", "akku", "pack", "modul", "bms", "tbat", "hv");

  /** Channels of the battery that other parts of a car have, too. */
  private static final Set<Channel> OF_THE_BATTERY =
      Set.of(Channel.BATTERY_TEMPERATURE, Channel.VOLTAGE, Channel.CURRENT);

  /** Unambiguous words for the state of charge. */
  private static final Pattern CHARGE =
      Pattern.compile("soc|[a-z]*soc|soc(?!k|i)[a-z0-9]*|ladezustand|akkustand|ladestand|ladegrad");

  /** Words next to a charge that is not a state of charge. */
  private static final Set<String> NOT_A_STATE =
      Set.of(
          "current",
          "power",
          "voltage",
          "energy",
          "temp",
          "temperature",
          "time",
          "rate",
          "counter",
          "cycles",
          "count",
          "port",
          "type",
          "speed");

  private static final Set<String> WISHED =
      Set.of("target", "limit", "goal", "max", "min", "set", "setpoint", "ziel");
  private static final Set<String> SHOWN = Set.of("display", "displayed", "disp", "shown", "dash");

  private static final int NAME_POINTS = 10;
  private static final int UNIT_POINTS = 6;
  private static final int SHAPE_POINTS = 2;
  private static final int BATTERY_POINTS = 5;
  private static final int SHOWN_POINTS = 1;
  private static final int OWN_POINTS = 100;

  /** A larger power is more likely in W, unless the header states kW. */
  private static final double MAX_KILOWATTS = 1500;

  private static final double MAX_KILOWATT_HOURS = 1000;

  private ChannelDetector() {}

  /** Returns each channel that the column may contain, with its score. */
  static List<ProposedRow> of(ForeignColumn column) {
    return meant(column).stream().filter(row -> fits(column, row)).toList();
  }

  /** Returns the channel that the column's name matches although its numbers do not. */
  static Optional<ProposedRow> implausible(ForeignColumn column) {
    return meant(column).stream()
        .filter(row -> !fits(column, row))
        .max(Comparator.comparingInt(ProposedRow::points));
  }

  /**
   * Returns why a column whose name resembles that of a channel is not one; empty if there is no
   * resemblance.
   */
  static Optional<String> otherMeaning(ForeignColumn column) {
    List<String> words = column.words();
    if (words.stream().anyMatch(w -> CHARGE.matcher(w).matches() || w.equals("charge"))
        && words.stream().anyMatch(WISHED::contains)) {
      return Optional.of("a target or limit of charge is no reading");
    }
    return words.stream().anyMatch(ChannelDetector::isOtherTemperature)
        ? Optional.of("it is not the battery's, by its name")
        : Optional.empty();
  }

  private static List<ProposedRow> meant(ForeignColumn column) {
    Optional<ProposedRow> own = own(column);
    if (own.isPresent()) {
      return List.of(own.get());
    }
    List<ProposedRow> rows = new ArrayList<>();
    if (column.isNumeric()) {
      Arrays.stream(Channel.values()).forEach(c -> guess(column, c).ifPresent(rows::add));
    } else if (isCharge(column.words())) {
      // Cells that are not numbers are reported individually; without this, the state of charge
      // would be left out silently.
      rows.add(ProposedRow.of(Channel.SOC.columnName(), column.index(), "%", NAME_POINTS));
    }
    return rows;
  }

  /**
   * Returns the column as its header states it, if that has the form of this program's own files.
   */
  private static Optional<ProposedRow> own(ForeignColumn column) {
    ColumnHeader head = ColumnHeader.of(column.head());
    return Arrays.stream(Channel.values())
        .filter(c -> c.columnName().equals(head.name()))
        .filter(
            c -> Unit.ofSymbol(head.unit()).filter(u -> u.quantity() == c.quantity()).isPresent())
        .findFirst()
        .map(c -> ProposedRow.of(c.columnName(), column.index(), head.unit(), OWN_POINTS));
  }

  /** Returns true if the words name the state of charge, and not a target. */
  private static boolean isCharge(List<String> words) {
    boolean state = words.contains("state") && words.contains("charge");
    boolean level =
        words.contains("level") && words.stream().anyMatch(w -> begins(w, BATTERY_WORDS));
    return words.stream().noneMatch(WISHED::contains)
        && (state || level || words.stream().anyMatch(w -> CHARGE.matcher(w).matches()));
  }

  private static boolean begins(String word, List<String> beginnings) {
    return beginnings.stream().anyMatch(b -> b.length() <= 3 ? word.equals(b) : word.startsWith(b));
  }

  private static Optional<ProposedRow> guess(ForeignColumn column, Channel channel) {
    List<String> words = column.words();
    boolean charge = channel == Channel.SOC && isCharge(words);
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
    boolean battery = words.stream().anyMatch(w -> begins(w, BATTERY_WORDS));
    boolean named =
        charge
            || words.stream().anyMatch(w -> isNamed(w, names(channel)))
            || (channel == Channel.BATTERY_TEMPERATURE && battery && words.contains("t"));
    boolean noState =
        channel == Channel.SOC
            && !charge
            && words.stream().anyMatch(w -> NOT_A_STATE.contains(w) || WISHED.contains(w));
    if ((!named && !unitFits)
        || (unit.isPresent() && !unitFits)
        || (ofStation && !station)
        || noState
        || (channel == Channel.BATTERY_TEMPERATURE
            && words.stream().anyMatch(w -> isOtherTemperature(w)))) {
      return Optional.empty();
    }
    int points =
        (named ? NAME_POINTS : 0)
            + (unitFits ? UNIT_POINTS : 0)
            + (shapeFits(column, channel) ? SHAPE_POINTS : 0)
            + (ofStation ? NAME_POINTS : 0)
            + (battery && OF_THE_BATTERY.contains(channel) ? BATTERY_POINTS : 0)
            + (charge && words.stream().anyMatch(SHOWN::contains) ? SHOWN_POINTS : 0);
    String stated = unitFits ? unit.orElseThrow() : "";
    return Optional.of(scaled(column, channel, stated, points));
  }

  private static boolean isOtherTemperature(String word) {
    return begins(word, OTHER_TEMPERATURES);
  }

  /** Returns true if a word is one of the names, or a compound that ends in a long one. */
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

  private static ProposedRow scaled(
      ForeignColumn column, Channel channel, String stated, int points) {
    double size = Math.max(Math.abs(column.least()), Math.abs(column.greatest()));
    String base = Unit.base(channel.quantity()).symbol();
    String unit = stated.isEmpty() ? base : stated;
    ProposedRow row = ProposedRow.of(channel.columnName(), column.index(), unit, points);
    return switch (channel) {
      case SOC -> isCharge(column.words()) || stated.isEmpty() ? share(row, size) : row;
      case POWER, STATION_POWER, CURRENT -> {
        boolean watts = channel != Channel.CURRENT && stated.isEmpty() && size > MAX_KILOWATTS;
        ProposedRow signed = column.negativeShare() > 0.5 ? row.withFactor("-1") : row;
        yield watts
            ? new ProposedRow(
                signed.item(), signed.index(), "W", signed.factor(), "", "", signed.points())
            : signed;
      }
      case ENERGY_ADDED, STATION_ENERGY -> energy(column, row, stated, size);
      default -> row;
    };
  }

  /**
   * Scales the state of charge from the forms that programs use: 0 to 1, 0 to 100, halves, 0 to
   * 255, tenths, hundredths.
   */
  private static ProposedRow share(ProposedRow row, double size) {
    if (size <= 1) {
      return row.withFactor("100");
    }
    if (size <= 100) {
      return row;
    }
    if (size <= 255) {
      return row.withFactor(size <= 200 ? "0.5" : "0.392157");
    }
    return row.withFactor(size <= 1000 ? "0.1" : "0.01");
  }

  private static ProposedRow energy(
      ForeignColumn column, ProposedRow row, String stated, double size) {
    boolean fromZero = column.first() <= 0.02 * column.greatest();
    boolean wattHours = stated.isEmpty() && fromZero && size > MAX_KILOWATT_HOURS;
    ProposedRow inUnit =
        wattHours ? ProposedRow.of(row.item(), row.index(), "Wh", row.points()) : row;
    return fromZero ? inUnit : inUnit.withOffset(ColumnEntryParser.LESS_FIRST);
  }

  /** Returns true if the scaled numbers are plausible for the channel. */
  private static boolean fits(ForeignColumn column, ProposedRow row) {
    if (!column.isNumeric()) {
      return true;
    }
    Channel channel =
        Arrays.stream(Channel.values())
            .filter(c -> c.columnName().equals(row.item()))
            .findFirst()
            .orElseThrow();
    double factor = row.factor().isEmpty() ? 1 : Double.parseDouble(row.factor());
    double less = row.offset().isEmpty() ? 0 : column.first();
    Unit unit = Unit.ofSymbol(row.unit()).orElseThrow();
    double one = unit.toBase(factor * (column.least() - less));
    double other = unit.toBase(factor * (column.greatest() - less));
    QuantityRange range = ChannelRange.of(channel);
    return range.contains(one) && range.contains(other);
  }
}
