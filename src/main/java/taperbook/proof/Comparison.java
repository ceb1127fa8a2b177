package taperbook.proof;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import taperbook.model.InputFile;

/** Holds a report as it was published against the report recomputed from what it carries. */
public final class Comparison {
  /** Lines of one page that are told, so that a page set anew does not fill the screen. */
  private static final int MOST_LINES = 3;

  private final CarriedReport carried;
  private final CarriedReport recomputed;
  private final List<Difference> found = new ArrayList<>();

  private Comparison(CarriedReport carried, CarriedReport recomputed) {
    this.carried = carried;
    this.recomputed = recomputed;
  }

  /** Every difference; none if the report follows from its inputs. */
  public static List<Difference> of(CarriedReport carried, CarriedReport recomputed) {
    Comparison comparison = new Comparison(carried, recomputed);
    comparison.found.addAll(inputs(carried));
    comparison.numbers();
    comparison.pages();
    boolean onlyTheRest = comparison.found.isEmpty() && !carried.rest().equals(recomputed.rest());
    if (onlyTheRest) {
      comparison.add(
          Difference.Kind.REST,
          "outside the pages",
          "outline, structure, metadata or attachments",
          "others");
    }
    return comparison.found;
  }

  /** Inputs that are not what {@code numbers.json} says they were. */
  public static List<Difference> inputs(CarriedReport carried) {
    List<Difference> found = new ArrayList<>();
    for (Map.Entry<String, String> entry : carried.numbers().hashes().entrySet()) {
      InputFile file = carried.files().get(entry.getKey());
      String is = file == null ? "not carried" : file.sha256();
      if (!is.equals(entry.getValue())) {
        found.add(
            new Difference(
                Difference.Kind.INPUT,
                entry.getKey(),
                "SHA-256 in numbers.json " + entry.getValue(),
                is.equals("not carried") ? is : "of the file carried " + is));
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
            one == null ? "no such number" : one.words(),
            other == null ? "no such number" : other.words());
      } else if (!one.stated().equals(other.stated())) {
        number(key, one, other);
      }
    }
    if (!carried.numbers().rest().equals(recomputed.numbers().rest())) {
      add(Difference.Kind.NUMBER, "cross-checks of numbers.json", "as carried", "others");
    }
  }

  private void number(String key, PublishedNumber one, PublishedNumber other) {
    if (!one.words().equals(other.words())) {
      add(Difference.Kind.NUMBER, key, one.words(), other.words());
      return;
    }
    Set<String> fields = new TreeSet<>(one.stated().keySet());
    fields.addAll(other.stated().keySet());
    for (String field : fields) {
      String a = one.stated().getOrDefault(field, "nothing");
      String b = other.stated().getOrDefault(field, "nothing");
      if (!a.equals(b)) {
        add(Difference.Kind.NUMBER, key + ", " + field, a, b);
      }
    }
  }

  private void pages() {
    int most = Math.max(carried.pages().size(), recomputed.pages().size());
    for (int i = 0; i < most; i++) {
      String place = "page " + (i + 1);
      if (i >= carried.pages().size() || i >= recomputed.pages().size()) {
        add(
            Difference.Kind.TEXT,
            place,
            i < carried.pages().size() ? "a page" : "no such page",
            i < recomputed.pages().size() ? "a page" : "no such page");
      } else {
        page(place, carried.pages().get(i), recomputed.pages().get(i));
      }
    }
  }

  private void page(String place, CarriedReport.Page one, CarriedReport.Page other) {
    if (one.lines().equals(other.lines())) {
      if (!one.drawing().equals(other.drawing())) {
        add(
            Difference.Kind.DRAWING,
            place,
            "lines, tints or letters",
            "others; the text is the same");
      }
      return;
    }
    int told = 0;
    int lines = Math.max(one.lines().size(), other.lines().size());
    for (int i = 0; i < lines && told < MOST_LINES; i++) {
      String a = i < one.lines().size() ? one.lines().get(i) : "nothing";
      String b = i < other.lines().size() ? other.lines().get(i) : "nothing";
      if (!a.equals(b)) {
        add(Difference.Kind.TEXT, place + ", line " + (i + 1), a, b);
        told++;
      }
    }
  }

  private void add(Difference.Kind kind, String place, String one, String other) {
    found.add(new Difference(kind, place, one, other));
  }
}
