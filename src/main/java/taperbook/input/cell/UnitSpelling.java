package taperbook.input.cell;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Suggests unit symbols for common spellings. Never substitutes them. */
public final class UnitSpelling {
  private static final Map<String, List<String>> SPELLINGS =
      Map.ofEntries(
          Map.entry("Cel", List.of("\u00b0c", "\u2103", "c", "degc", "celsius", "centigrade")),
          Map.entry("degF", List.of("\u00b0f", "\u2109", "f", "fahrenheit")),
          Map.entry("%", List.of("percent", "percents", "pct", "prozent")),
          Map.entry("km", List.of("kms", "kilometer", "kilometers", "kilometre", "kilometres")),
          Map.entry("mi", List.of("mile", "miles", "m", "mls")),
          Map.entry("mi/h", List.of("mph", "mi/hr", "miles/h", "milesperhour")),
          Map.entry("km/h", List.of("kph", "kmh", "kmph", "km/hr")),
          Map.entry("kW", List.of("kilowatt", "kilowatts")),
          Map.entry("kWh", List.of("kilowatthour", "kilowatthours", "kw/h", "kw.h", "kw*h")),
          Map.entry("W", List.of("watt", "watts")),
          Map.entry("V", List.of("volt", "volts")),
          Map.entry("A", List.of("amp", "amps", "ampere", "amperes")),
          Map.entry("s", List.of("sec", "secs", "second", "seconds")),
          Map.entry("min", List.of("m", "mins", "minute", "minutes")),
          Map.entry("h", List.of("hr", "hrs", "hour", "hours")),
          Map.entry("min:s", List.of("m:s", "m:ss", "mm:ss", "min:sec", "min:ss")),
          Map.entry("h:min:s", List.of("h:m:s", "h:mm:ss", "hh:mm:ss", "h:min:sec", "time", "hms")),
          Map.entry("ISO 8601", List.of("iso", "iso-8601", "time", "utc", "datetime", "date-time")),
          Map.entry("m", List.of("meter", "meters", "metre", "metres")),
          Map.entry("ft", List.of("foot", "feet")),
          Map.entry("kg", List.of("kilo", "kilos", "kilogram", "kilograms")),
          Map.entry("lb", List.of("lbs", "pound", "pounds")),
          Map.entry("psi", List.of("lbf/in2", "psig")),
          Map.entry("hPa", List.of("mbar", "millibar")),
          Map.entry("deg", List.of("\u00b0", "degree", "degrees")),
          Map.entry("kWh/100 km", List.of("kwh/100", "kwhper100km")),
          Map.entry("Wh/mi", List.of("wh/mile", "whpermile")),
          Map.entry("mi/kWh", List.of("miles/kwh", "mile/kwh", "milesperkwh")),
          Map.entry("1", List.of("factor", "x", "ratio")));

  private UnitSpelling() {}

  /** Returns the permitted symbol that the text means, if it can be determined. */
  public static Optional<String> suggest(String written, List<String> allowed) {
    String plain = plain(written);
    Map<String, String> meanings = new HashMap<>();
    for (String symbol : allowed) {
      SPELLINGS.getOrDefault(symbol, List.of()).forEach(s -> meanings.putIfAbsent(s, symbol));
    }
    allowed.forEach(symbol -> meanings.put(plain(symbol), symbol));
    return Optional.ofNullable(meanings.get(plain));
  }

  private static String plain(String text) {
    return text.replaceAll("[\\s\\u00a0]+", "").toLowerCase(Locale.ROOT);
  }
}
