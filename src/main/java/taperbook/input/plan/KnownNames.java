package taperbook.input.plan;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Texts;
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
   * @param kind what they name, as a text
   * @param file name of the file that a folder of this kind needs; empty if there is none
   * @param started true for a name whose folder exists, even if it cannot be used
   */
  KnownNames(
      String kind, String file, Set<String> names, Predicate<String> started, ProblemLog log) {
    this.kind = kind;
    this.file = file;
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
      written.report(
          log,
          ProblemCode.NAME_UNKNOWN,
          Texts.of("input.known_names.whose_folder_is_there_and", Quoted.of(written.text()), kind),
          Texts.of("input.known_names.that_can_be_used", kind),
          Texts.of("input.known_names.mend_that_first_it_needs", file, written.text()));
      return Optional.empty();
    }
    written.refuse(
        log,
        ProblemCode.NAME_UNKNOWN,
        names.isEmpty()
            ? Texts.of("input.known_names.name_of_of_which_there", kind)
            : Texts.of("input.known_names.that_exists", kind, String.join(", ", names)),
        Suggestion.remedy(
            written.text(), names, Texts.of("input.known_names.write_one_that_exists_or", kind)));
    return Optional.empty();
  }
}
