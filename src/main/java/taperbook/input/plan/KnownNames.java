package taperbook.input.plan;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.input.cell.Suggestion;
import taperbook.input.folder.FrontMatterValue;

/** The names of one kind that a report can refer to. */
final class KnownNames {
  private final String kind;
  private final String file;
  private final Set<String> names;
  private final Predicate<String> started;
  private final ProblemLog log;

  /**
   * Sorts the names.
   *
   * @param kind what they name, such as {@code session}
   * @param started true for a name whose folder exists, even if it cannot be used
   */
  KnownNames(String kind, Set<String> names, Predicate<String> started, ProblemLog log) {
    this.kind = kind;
    this.file =
        Stream.of(
                kind.contains("session") ? "readings.csv" : "",
                kind.contains("range test") ? "range-test.csv" : "")
            .filter(f -> !f.isEmpty())
            .collect(Collectors.joining(" or "));
    this.names = new TreeSet<>(names);
    this.started = started;
    this.log = log;
  }

  boolean has(FrontMatterValue written) {
    return names.contains(written.text());
  }

  /** Returns the name if it is known; otherwise reports a problem that suggests the nearest one. */
  Optional<String> find(FrontMatterValue written) {
    if (names.contains(written.text())) {
      return Optional.of(written.text());
    }
    if (started.test(written.text())) {
      log.add(
          ProblemCode.NAME_UNKNOWN,
          written.line(),
          written.column(),
          Quoted.of(written.text()) + ", whose folder is there and holds no " + kind + " yet",
          "a " + kind + " that can be used",
          "mend that first: it needs " + file + ", see what is told of sessions/" + written.text());
      return Optional.empty();
    }
    log.add(
        ProblemCode.NAME_UNKNOWN,
        written.line(),
        written.column(),
        Quoted.of(written.text()),
        names.isEmpty()
            ? "the name of a " + kind + ", of which there is none"
            : "a " + kind + " that exists: " + String.join(", ", names),
        Suggestion.of(written.text(), names)
            .map(n -> "write " + Quoted.of(n))
            .orElse("write one that exists, or add a " + kind + " of this name"));
    return Optional.empty();
  }
}
