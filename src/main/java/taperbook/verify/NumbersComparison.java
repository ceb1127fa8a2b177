package taperbook.verify;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import taperbook.i18n.Texts;
import taperbook.session.InputFile;

/** Compares the published numbers of a report with those recomputed from its embedded inputs. */
public final class NumbersComparison {
  private final CarriedReport carried;
  private final CarriedReport recomputed;

  /**
   * Another program version may state more about a number; information that the published number
   * lacks is not a contradiction.
   */
  private final boolean sameProgram;

  private final List<Difference> found = new ArrayList<>();

  private NumbersComparison(CarriedReport carried, CarriedReport recomputed) {
    this.carried = carried;
    this.recomputed = recomputed;
    this.sameProgram = carried.program().equals(recomputed.program());
  }

  /** Returns all differences in inputs and numbers; empty if the numbers follow from the inputs. */
  public static List<Difference> of(CarriedReport carried, CarriedReport recomputed) {
    NumbersComparison comparison = new NumbersComparison(carried, recomputed);
    comparison.found.addAll(inputs(carried));
    comparison.numbers();
    return comparison.found;
  }

  /** Returns the inputs that do not match their hashes in {@code numbers.json}. */
  public static List<Difference> inputs(CarriedReport carried) {
    List<Difference> found = new ArrayList<>();
    for (Map.Entry<String, String> entry : carried.numbers().hashes().entrySet()) {
      InputFile file = carried.files().get(entry.getKey());
      String actual =
          file == null ? Texts.of("verify.numbers_comparison.not_carried") : file.sha256();
      if (!actual.equals(entry.getValue())) {
        found.add(
            new Difference(
                Difference.Kind.INPUT,
                entry.getKey(),
                Texts.of("verify.numbers_comparison.sha_256_in_numbers_json", entry.getValue()),
                file == null
                    ? actual
                    : Texts.of("verify.numbers_comparison.of_file_carried", actual)));
      }
    }
    return found;
  }

  private void numbers() {
    Set<String> keys = new LinkedHashSet<>(carried.numbers().numbers().keySet());
    keys.addAll(recomputed.numbers().numbers().keySet());
    for (String key : keys) {
      PublishedNumber one = carried.numbers().numbers().get(key);
      PublishedNumber other = recomputed.numbers().numbers().get(key);
      if (one == null || other == null) {
        add(
            Difference.Kind.NUMBER,
            key,
            one == null ? Texts.of("verify.numbers_comparison.no_such_number") : one.words(),
            other == null ? Texts.of("verify.numbers_comparison.no_such_number") : other.words());
      } else if (!one.stated().equals(other.stated())) {
        number(key, one, other);
      }
    }
    Map<String, String> rest = new TreeMap<>(recomputed.numbers().rest());
    if (!sameProgram) {
      rest.keySet().retainAll(carried.numbers().rest().keySet());
    }
    if (!carried.numbers().rest().equals(rest)) {
      add(
          Difference.Kind.NUMBER,
          Texts.of("verify.numbers_comparison.cross_checks_of_numbers_json"),
          Texts.of("verify.numbers_comparison.as_carried"),
          "others");
    }
  }

  private void number(String key, PublishedNumber one, PublishedNumber other) {
    String method =
        one.method().orElse(Texts.of("verify.numbers_comparison.method_that_is_not_named"));
    boolean revised = other.method().isPresent() && !other.method().get().equals(method);
    if (!one.words().equals(other.words())) {
      add(
          Difference.Kind.NUMBER,
          key,
          one.words() + (revised ? Texts.of("verify.numbers_comparison.by", method) : ""),
          other.words()
              + (revised ? Texts.of("verify.numbers_comparison.by", other.method().get()) : ""));
      return;
    }
    Set<String> fields = new TreeSet<>(one.stated().keySet());
    if (sameProgram) {
      fields.addAll(other.stated().keySet());
    }
    for (String field : fields) {
      String a = one.stated().getOrDefault(field, "nothing");
      String b = other.stated().getOrDefault(field, "nothing");
      if (!a.equals(b)) {
        add(Difference.Kind.NUMBER, key + ", " + field, a, b);
      }
    }
  }

  private void add(Difference.Kind kind, String place, String one, String other) {
    found.add(new Difference(kind, place, one, other));
  }
}
