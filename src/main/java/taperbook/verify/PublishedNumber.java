package taperbook.verify;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import taperbook.i18n.Texts;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;

/**
 * One number of {@code numbers.json}.
 *
 * @param id its id
 * @param session the session it is about
 * @param against the session that one is compared with; empty if there is none
 * @param label description of the number
 * @param unit symbol of its unit
 * @param value its value; empty if it is withheld
 * @param low lower end of its interval
 * @param high upper end of its interval
 * @param rows the rows that it was computed from
 * @param stated all of its fields, as text by name
 */
record PublishedNumber(
    String id,
    String session,
    String against,
    String label,
    String unit,
    OptionalDouble value,
    OptionalDouble low,
    OptionalDouble high,
    List<String> rows,
    Map<String, String> stated) {
  public PublishedNumber {
    rows = List.copyOf(rows);
    stated = new TreeMap<>(stated);
  }

  static PublishedNumber of(Map<?, ?> json) {
    Map<String, String> stated = new LinkedHashMap<>();
    json.forEach((name, value) -> stated.put(String.valueOf(name), String.valueOf(value)));
    return new PublishedNumber(
        JsonTree.text(json, "id").orElse(""),
        JsonTree.text(json, "session").orElse(""),
        JsonTree.text(json, "against").orElse(""),
        JsonTree.text(json, "label").orElse(""),
        JsonTree.text(json, "unit").orElse(""),
        JsonTree.amount(json, "value"),
        JsonTree.amount(json, "low"),
        JsonTree.amount(json, "high"),
        JsonTree.texts(json, "rows"),
        stated);
  }

  /** Returns value and interval; empty if it is withheld. */
  Optional<Estimate> estimate() {
    if (value.isEmpty() || low.isEmpty() || high.isEmpty()) {
      return Optional.empty();
    }
    double min = Math.min(low.getAsDouble(), value.getAsDouble());
    double max = Math.max(high.getAsDouble(), value.getAsDouble());
    return Optional.of(new Estimate(value.getAsDouble(), new Interval(min, max)));
  }

  /** Returns a key that is unique within its report. */
  public String key() {
    return key(id, session, against);
  }

  /** Returns the key of a number, unique within its report. */
  public static String key(String id, String session, String against) {
    return id
        + " ("
        + session
        + (against.isEmpty() ? "" : Texts.of("verify.published_number.against", against))
        + ")";
  }

  /** Returns the method and its version; empty if the program that wrote it did not state them. */
  Optional<String> method() {
    return Optional.ofNullable(stated.get("method"))
        .map(
            name ->
                Texts.of(
                    "verify.published_number.version",
                    name,
                    stated.getOrDefault(
                        "method_version", Texts.of("verify.published_number.unknown"))));
  }

  /** Returns value and interval as printed, or why there is none. */
  public String words() {
    Optional<String> withheld =
        Optional.ofNullable(stated.get("withheld")).filter(w -> !w.equals("null"));
    return withheld
        .map(reason -> Texts.of("verify.published_number.withheld", reason))
        .orElseGet(
            () ->
                Texts.of(
                    "verify.published_number.to",
                    stated.getOrDefault("value", ""),
                    unit,
                    stated.getOrDefault("low", ""),
                    stated.getOrDefault("high", "")));
  }
}
