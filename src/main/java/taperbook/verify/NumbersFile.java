package taperbook.verify;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.quantity.SocWindow;
import taperbook.result.CommonGround;

/**
 * The content of a {@code numbers.json}.
 *
 * @param report name of the report
 * @param hashes SHA-256 of each input by its path, in order
 * @param numbers every number by its key, in order
 * @param ground the windows of its comparison, if it states any
 * @param rest all other content, as text by its place, such as the cross-checks
 */
public record NumbersFile(
    String report,
    Map<String, String> hashes,
    Map<String, PublishedNumber> numbers,
    Optional<CommonGround> ground,
    Map<String, String> rest) {
  public NumbersFile {
    hashes = Collections.unmodifiableMap(new LinkedHashMap<>(hashes));
    numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
    rest = Collections.unmodifiableMap(new LinkedHashMap<>(rest));
  }

  /** Reads the file, or returns why it is invalid. */
  public static Checked<NumbersFile> read(String file, byte[] json) {
    ProblemLog log = new ProblemLog(file);
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      Object tree = JsonTree.read(parser);
      if (tree instanceof Map<?, ?> root && JsonTree.text(root, "report").isPresent()) {
        return Checked.good(of(root));
      }
      refuse(log, "JSON without the name of a report");
    } catch (JsonProcessingException e) {
      refuse(log, "text that is not JSON: " + e.getOriginalMessage());
    } catch (IOException e) {
      // The bytes are in memory, so only their content can cause this: for example, they look like
      // UTF-32.
      refuse(log, "bytes that are no text: " + e.getMessage());
    }
    return Checked.refused(log.list());
  }

  private static void refuse(ProblemLog log, String found) {
    log.add(
        ProblemCode.PUBLISHED_NOT_UNDERSTOOD,
        found,
        "a numbers.json as Taperbook writes it",
        "take the file as it was published");
  }

  private static NumbersFile of(Map<?, ?> root) {
    Map<String, String> hashes = new LinkedHashMap<>();
    for (Map<?, ?> input : JsonTree.objects(root, "inputs")) {
      hashes.put(
          JsonTree.text(input, "file").orElse(""), JsonTree.text(input, "sha256").orElse(""));
    }
    Map<String, PublishedNumber> numbers = new LinkedHashMap<>();
    for (Map<?, ?> number : JsonTree.objects(root, "numbers")) {
      PublishedNumber read = PublishedNumber.of(number);
      numbers.put(read.key(), read);
    }
    Map<String, String> rest = new LinkedHashMap<>();
    List<String> known = new ArrayList<>(List.of("format", "report", "inputs", "numbers"));
    root.forEach(
        (name, value) -> {
          if (!known.contains(String.valueOf(name))) {
            rest.put(String.valueOf(name), String.valueOf(value));
          }
        });
    return new NumbersFile(
        JsonTree.text(root, "report").orElse(""), hashes, numbers, ground(root), rest);
  }

  private static Optional<CommonGround> ground(Map<?, ?> root) {
    if (!(root.get("common_ground") instanceof Map<?, ?> json)) {
      return Optional.empty();
    }
    try {
      OptionalDouble energy = JsonTree.amount(json, "energy_kwh");
      return Optional.of(
          new CommonGround(
              window(json, "shared"),
              window(json, "warmed"),
              energy.isEmpty() ? OptionalInt.empty() : OptionalInt.of((int) energy.getAsDouble()),
              JsonTree.text(json, "frozen_since")
                  .map(LocalDate::parse)
                  .map(day -> new CommonGround.Frozen(day, List.of()))));
    } catch (IllegalArgumentException | DateTimeException e) {
      // Not the program's own format: the windows are then determined again.
      return Optional.empty();
    }
  }

  private static Optional<SocWindow> window(Map<?, ?> json, String name) {
    if (!(json.get(name) instanceof Map<?, ?> window)) {
      return Optional.empty();
    }
    OptionalDouble from = JsonTree.amount(window, "from");
    OptionalDouble to = JsonTree.amount(window, "to");
    return from.isEmpty() || to.isEmpty()
        ? Optional.empty()
        : Optional.of(new SocWindow((int) from.getAsDouble(), (int) to.getAsDouble()));
  }

  /** Returns the names of the sessions that its numbers are about. */
  public Set<String> sessions() {
    return numbers.values().stream().map(PublishedNumber::session).collect(Collectors.toSet());
  }

  /** Returns the number with a key, if present. */
  public Optional<PublishedNumber> find(String key) {
    return Optional.ofNullable(numbers.get(key));
  }
}
