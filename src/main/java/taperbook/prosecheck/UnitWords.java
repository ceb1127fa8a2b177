package taperbook.prosecheck;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;
import taperbook.quantity.Unit;

/** Units in running text: symbols, which are case-sensitive, and words, which are not. */
final class UnitWords {
  private static final Map<Unit, String> WORDS = words();

  private static final Map<Unit, Pattern> PATTERNS = patterns();

  /**
   * Regular expression for any unit, longest first, at a word end; no symbol contains {@code \\s}.
   */
  static final String ANY =
      "(?:(?:"
          + String.join("|", WORDS.values())
          + ")(?![\\w/\\u00b2])|(?:%|(?i:per cent|percent)))";

  private UnitWords() {}

  private static Map<Unit, String> words() {
    Map<Unit, String> words = new LinkedHashMap<>();
    String kilometres = "(?:km|(?i:kilomet(?:re|er)s?))";
    String miles = "(?:mi|(?i:miles?))";
    String per = "(?:/| ?per ?)";
    words.put(
        Unit.KILOWATT_HOUR_PER_100_KILOMETRES,
        "kWh" + per + " ?(?:100|(?i:hundred)) ?" + kilometres);
    words.put(Unit.WATT_HOUR_PER_KILOMETRE, "Wh" + per + kilometres);
    words.put(Unit.WATT_HOUR_PER_MILE, "Wh" + per + miles);
    words.put(Unit.MILE_PER_KILOWATT_HOUR, miles + per + "kWh");
    words.put(Unit.KILOMETRE_PER_KILOWATT_HOUR, kilometres + per + "kWh");
    words.put(Unit.KILOWATT_HOUR, "kWh|(?i:kilowatt[- ]hours?)");
    words.put(Unit.KILOWATT, "kW|(?i:kilowatts?)(?![- ]hour)");
    words.put(Unit.KILOMETRE_PER_HOUR, "km/h|kph|(?i:kilomet(?:re|er)s (?:per|an) hour)");
    words.put(Unit.MILE_PER_HOUR, "mi/h|mph|(?i:miles (?:per|an) hour)");
    words.put(Unit.KILOMETRE, kilometres);
    words.put(Unit.MILE, miles);
    words.put(Unit.CELSIUS, "\\u00b0 ?C|(?i:degrees?) (?:C|Celsius)");
    words.put(Unit.FAHRENHEIT, "\\u00b0 ?F|(?i:degrees?) (?:F|Fahrenheit)");
    words.put(Unit.HOUR, "(?i:hours?|hrs?|h)");
    words.put(Unit.MINUTE, "(?i:minutes?|mins?)");
    words.put(Unit.SECOND, "s|(?i:seconds?|secs?)");
    return words;
  }

  private static Map<Unit, Pattern> patterns() {
    Map<Unit, Pattern> patterns = new LinkedHashMap<>();
    WORDS.forEach((unit, words) -> patterns.put(unit, Pattern.compile(words)));
    return patterns;
  }

  /** Returns the unit that a text names. */
  static Unit of(String written) {
    return PATTERNS.entrySet().stream()
        .filter(e -> e.getValue().matcher(written).matches())
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(Unit.PERCENT);
  }
}
