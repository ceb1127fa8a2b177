package taperbook.proof;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import taperbook.model.Estimate;
import taperbook.model.InputFile;
import taperbook.model.Interval;
import taperbook.model.MovedNumber;
import taperbook.model.Unit;

/** Which numbers moved from one version of a report to the next, and what caused it. */
public final class Moves {
  /** Ends of an interval that moved by less than this share of its width did not move. */
  private static final double STILL = 0.05;

  /** More changes than these are told by their number. */
  private static final int MOST_CAUSES = 4;

  private final NumbersFile before;
  private final NumbersFile after;
  private final List<RowChange> changes;
  private final List<String> others = new ArrayList<>();

  private Moves(NumbersFile before, NumbersFile after) {
    this.before = before;
    this.after = after;
    this.changes = List.of();
  }

  private Moves(
      CarriedReport before, NumbersFile after, Map<String, InputFile> inputs, String program) {
    this.before = before.numbers();
    this.after = after;
    this.changes = RowChanges.between(before.files(), inputs);
    for (Map.Entry<String, InputFile> input : inputs.entrySet()) {
      InputFile old = before.files().get(input.getKey());
      if (input.getKey().endsWith(".md")
          && old != null
          && !old.sha256().equals(input.getValue().sha256())) {
        others.add(input.getKey() + " was changed");
      }
    }
    if (!before.program().equals(program)) {
      others.add(before.program() + " was replaced by " + program);
    }
  }

  /**
   * The numbers that moved, in the order of the new version.
   *
   * @param before the version that was published
   * @param after the numbers now
   * @param inputs the input files now, by path
   * @param program name and version of the program now
   */
  public static List<MovedNumber> between(
      CarriedReport before, NumbersFile after, Map<String, InputFile> inputs, String program) {
    return new Moves(before, after, inputs, program).list();
  }

  /** The numbers that moved, in the order of the new version, without what caused it. */
  public static List<MovedNumber> between(NumbersFile before, NumbersFile after) {
    return new Moves(before, after).list();
  }

  private List<MovedNumber> list() {
    Set<String> keys = new LinkedHashSet<>(after.numbers().keySet());
    keys.addAll(before.numbers().keySet());
    List<MovedNumber> moved = new ArrayList<>();
    for (String key : keys) {
      Optional<PublishedNumber> old = before.find(key);
      Optional<PublishedNumber> now = after.find(key);
      Optional<Estimate> was = old.flatMap(Moves::estimate);
      Optional<Estimate> is = now.flatMap(Moves::estimate);
      if (hasMoved(was, is)) {
        PublishedNumber named = now.or(() -> old).orElseThrow();
        moved.add(
            new MovedNumber(
                named.id(),
                named.session(),
                named.against(),
                named.label(),
                Unit.ofSymbol(named.unit()).orElse(Unit.ONE),
                was,
                is,
                causes(old, now)));
      }
    }
    return moved;
  }

  private static Optional<Estimate> estimate(PublishedNumber number) {
    if (number.value().isEmpty() || number.low().isEmpty() || number.high().isEmpty()) {
      return Optional.empty();
    }
    double low = Math.min(number.low().getAsDouble(), number.value().getAsDouble());
    double high = Math.max(number.high().getAsDouble(), number.value().getAsDouble());
    return Optional.of(new Estimate(number.value().getAsDouble(), new Interval(low, high)));
  }

  private static boolean hasMoved(Optional<Estimate> was, Optional<Estimate> is) {
    if (was.isEmpty() || is.isEmpty()) {
      return was.isPresent() != is.isPresent();
    }
    double scale = Math.max(1e-12, Math.abs(was.get().value()));
    Interval old = was.get().bounds();
    Interval now = is.get().bounds();
    double still = STILL * Math.max(old.width(), now.width()) + 1e-9 * scale;
    return Math.abs(is.get().value() - was.get().value()) > 1e-9 * scale
        || Math.abs(now.low() - old.low()) > still
        || Math.abs(now.high() - old.high()) > still;
  }

  /** Changed rows that it rests on; else changed rows of the same files; else what else changed. */
  private List<String> causes(Optional<PublishedNumber> old, Optional<PublishedNumber> now) {
    List<String> rows = new ArrayList<>();
    List<String> files = new ArrayList<>();
    for (RowChange change : changes) {
      if (restsOn(old, change.file(), change.lineBefore())
          || restsOn(now, change.file(), change.lineAfter())) {
        rows.add(change.words());
      } else if (old.or(() -> now).stream().anyMatch(n -> restsOnFile(n, change.file()))) {
        files.add(change.words());
      }
    }
    List<String> causes = rows.isEmpty() ? files : rows;
    if (causes.isEmpty()) {
      causes = others.isEmpty() ? changes.stream().map(RowChange::words).toList() : others;
    }
    return shortened(causes);
  }

  private static List<String> shortened(List<String> causes) {
    if (causes.size() <= MOST_CAUSES) {
      return causes;
    }
    List<String> first = new ArrayList<>(causes.subList(0, MOST_CAUSES - 1));
    first.add(causes.size() - first.size() + " more changed rows");
    return first;
  }

  private static boolean restsOnFile(PublishedNumber number, String file) {
    return number.rows().stream().anyMatch(r -> r.startsWith(file + ":"));
  }

  /** True if a line is among a number's rows, which are single lines or runs of them. */
  private static boolean restsOn(Optional<PublishedNumber> number, String file, int line) {
    return line > 0
        && number.stream()
            .flatMap(n -> n.rows().stream())
            .filter(r -> r.startsWith(file + ":"))
            .map(r -> r.substring(file.length() + 1))
            .anyMatch(run -> holds(run, line));
  }

  private static boolean holds(String run, int line) {
    int dash = run.indexOf('-');
    try {
      int first = Integer.parseInt(dash < 0 ? run : run.substring(0, dash));
      int last = dash < 0 ? first : Integer.parseInt(run.substring(dash + 1));
      return first <= line && line <= last;
    } catch (NumberFormatException e) {
      return false;
    }
  }
}
