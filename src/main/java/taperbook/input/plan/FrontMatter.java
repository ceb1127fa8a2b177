package taperbook.input.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.input.cell.NormalizedName;
import taperbook.input.cell.Suggestion;
import taperbook.input.folder.FrontMatterEntry;
import taperbook.input.folder.FrontMatterValue;
import taperbook.input.folder.ReportFile;

/** The front matter of a report by key. */
public final class FrontMatter {
  private final ReportFile raw;
  private final ProblemLog log;
  private final Map<ReportKey, FrontMatterEntry> entries = new HashMap<>();

  public FrontMatter(ReportFile raw, ProblemLog log) {
    this.raw = raw;
    this.log = log;
    raw.entries().forEach(this::take);
  }

  /** Returns the value of a key, if present; reports a problem if there are several. */
  public Optional<FrontMatterValue> value(ReportKey key) {
    List<FrontMatterValue> values = values(key);
    if (values.size() > 1) {
      FrontMatterValue second = values.get(1);
      log.add(
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          second.line(),
          second.column(),
          values.size() + " values",
          "one value for " + key.words(),
          "keep the one that is meant");
    }
    return values.stream().findFirst();
  }

  /** Returns the value of a required key; reports a problem if it is missing. */
  Optional<FrontMatterValue> required(ReportKey key) {
    Optional<FrontMatterValue> value = value(key);
    if (value.isEmpty()) {
      FrontMatterEntry entry = entries.get(key);
      log.add(
          ProblemCode.KEY_MISSING,
          entry == null ? raw.firstLine() : entry.line(),
          entry == null ? 0 : entry.column(),
          entry == null ? "no key " + key.words() : key.words() + " without a value",
          key.meaning(),
          "write " + Quoted.of(key.words() + ": " + key.example()));
    }
    return value;
  }

  /** Refuses a key that this kind of report does not support, if present. */
  void refuse(ReportKey key, String expected, String remedy) {
    FrontMatterEntry entry = entries.get(key);
    if (entry != null) {
      log.add(
          ProblemCode.KEY_OUT_OF_PLACE,
          entry.line(),
          entry.column(),
          Quoted.of(entry.key()),
          expected,
          remedy);
    }
  }

  /** Returns all values of a key: the items below it, split at commas. */
  List<FrontMatterValue> list(ReportKey key) {
    List<FrontMatterValue> all = new ArrayList<>();
    values(key).forEach(value -> split(value, ',', all));
    return all;
  }

  /**
   * Returns all values of a key that is present; reports a problem if it has none.
   *
   * @param remedy an instruction for that case
   */
  List<FrontMatterValue> listIfPresent(ReportKey key, String remedy) {
    List<FrontMatterValue> all = list(key);
    reportIfEmpty(key, all, remedy);
    return all;
  }

  private void reportIfEmpty(ReportKey key, List<?> all, String remedy) {
    FrontMatterEntry entry = entries.get(key);
    if (entry != null && all.isEmpty()) {
      log.add(
          ProblemCode.KEY_MISSING,
          entry.line(),
          entry.column(),
          key.words() + " without a value",
          key.meaning(),
          remedy);
    }
  }

  /**
   * As {@link #listIfPresent}, in groups: semicolons separate groups, and commas separate the
   * values of a group.
   */
  List<List<FrontMatterValue>> groupsIfPresent(ReportKey key, String remedy) {
    List<FrontMatterValue> whole = new ArrayList<>();
    values(key).forEach(value -> split(value, ';', whole));
    List<List<FrontMatterValue>> groups = new ArrayList<>();
    for (FrontMatterValue group : whole) {
      List<FrontMatterValue> names = new ArrayList<>();
      split(group, ',', names);
      if (!names.isEmpty()) {
        groups.add(names);
      }
    }
    reportIfEmpty(key, groups, remedy);
    return groups;
  }

  /** Returns all values of a key without splitting them at commas. */
  List<FrontMatterValue> items(ReportKey key) {
    return values(key);
  }

  private List<FrontMatterValue> values(ReportKey key) {
    return Optional.ofNullable(entries.get(key)).map(FrontMatterEntry::values).orElse(List.of());
  }

  /** Splits a value at a separator; square brackets around the whole value are removed. */
  private static void split(FrontMatterValue value, char mark, List<FrontMatterValue> all) {
    String text = value.text();
    int from = text.startsWith("[") && text.endsWith("]") ? 1 : 0;
    int end = text.length() - from;
    while (from <= end) {
      int next = text.indexOf(mark, from);
      int to = next < 0 || next > end ? end : next;
      String part = text.substring(from, to);
      if (!part.isBlank()) {
        int lead = part.indexOf(part.strip());
        all.add(new FrontMatterValue(part.strip(), value.line(), value.column() + from + lead));
      }
      from = to + 1;
    }
  }

  private void take(FrontMatterEntry entry) {
    String name = NormalizedName.of(entry.key().replace('_', ' ').replace('-', ' '));
    Optional<ReportKey> key =
        Arrays.stream(ReportKey.values()).filter(k -> k.words().equals(name)).findFirst();
    if (key.isEmpty()) {
      reportUnknown(entry, name);
      return;
    }
    FrontMatterEntry first = entries.putIfAbsent(key.get(), entry);
    if (first != null) {
      log.add(
          ProblemCode.KEY_TWICE,
          entry.line(),
          entry.column(),
          Quoted.of(entry.key()) + " as on line " + first.line(),
          "each key once",
          "take one of the two away");
    }
  }

  private void reportUnknown(FrontMatterEntry entry, String name) {
    List<String> keys = Arrays.stream(ReportKey.values()).map(ReportKey::words).toList();
    log.add(
        ProblemCode.KEY_UNKNOWN,
        entry.line(),
        entry.column(),
        Quoted.of(entry.key()),
        "one of the keys " + String.join(", ", keys),
        Suggestion.of(name, keys)
            .map(k -> "write " + Quoted.of(k))
            .orElse("take the line away, or write it into the article below"));
  }
}
