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
import taperbook.i18n.Texts;
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
      second.report(
          log,
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          Texts.of("input.front_matter.values", values.size()),
          Texts.of("input.front_matter.one_value_for", key.words()),
          Texts.of("input.common.keep_one_that_is_meant"));
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
          entry == null
              ? Texts.of("input.common.no_key", key.words())
              : Texts.of("input.front_matter.without_value", key.words()),
          key.meaning(),
          Texts.of("input.common.write", Quoted.of(key.words() + ": " + key.example())));
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
          Texts.of("input.front_matter.without_value", key.words()),
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

  /**
   * Reports a value that is none of some words.
   *
   * @param meant the word that is probably meant
   */
  public static void refuseWord(
      FrontMatterValue written, List<String> words, Optional<String> meant, ProblemLog log) {
    written.refuse(
        log,
        ProblemCode.VALUE_NOT_UNDERSTOOD,
        Texts.of("input.common.one_of_words", String.join(", ", words)),
        meant
            .map(w -> Texts.of("input.common.write", w))
            .orElse(Texts.of("input.common.write_one_of_these_words")));
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
          Texts.of("input.common.as_on_line", Quoted.of(entry.key()), first.line()),
          Texts.of("input.front_matter.each_key_once"),
          Texts.of("input.common.take_one_of_two_away"));
    }
  }

  private void reportUnknown(FrontMatterEntry entry, String name) {
    List<String> keys = Arrays.stream(ReportKey.values()).map(ReportKey::words).toList();
    log.add(
        ProblemCode.KEY_UNKNOWN,
        entry.line(),
        entry.column(),
        Quoted.of(entry.key()),
        Texts.of("input.front_matter.one_of_keys", String.join(", ", keys)),
        Suggestion.remedy(name, keys, Texts.of("input.front_matter.take_line_away_or_write")));
  }
}
