package taperbook.input.cell;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.input.csv.CsvTable;

/** Finds the known columns of a file. */
public final class Columns {
  private static final int MAX_HEADS = 30;

  private final CsvTable table;
  private final List<ColumnSpec> specs;
  private final ProblemLog log;
  private final Map<String, Column> found = new LinkedHashMap<>();
  private final Set<String> named = new LinkedHashSet<>();

  private Columns(CsvTable table, List<ColumnSpec> specs, ProblemLog log) {
    this.table = table;
    this.specs = specs;
    this.log = log;
  }

  public static Columns of(CsvTable table, List<ColumnSpec> specs, ProblemLog log) {
    Columns columns = new Columns(table, specs, log);
    for (int i = 0; i < table.header().cells().size(); i++) {
      columns.take(i, table.header().cell(i));
    }
    return columns;
  }

  /** Returns the columns that another file declares for a table, by name. */
  public static Columns stated(
      CsvTable table, List<ColumnSpec> specs, Map<String, Column> stated, ProblemLog log) {
    Columns columns = new Columns(table, specs, log);
    columns.found.putAll(stated);
    columns.named.addAll(stated.keySet());
    return columns;
  }

  /**
   * Returns the column with a name, if present; with the most likely unit if its own was refused.
   */
  public Optional<Column> find(String name) {
    return Optional.ofNullable(found.get(name));
  }

  /** Returns true if the header contains the column, even if its unit was refused. */
  public boolean names(String name) {
    return named.contains(name);
  }

  /** Reports a missing column, unless the header contains it. */
  public void require(String name) {
    if (!names(name)) {
      ColumnSpec spec = specs.stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
      missing("a column " + Quoted.of(spec.head()), "add the column");
    }
  }

  /** Reports a missing column. */
  public void missing(String expected, String remedy) {
    int size = table.header().cells().size();
    String heads =
        table.header().cells().stream()
            .limit(MAX_HEADS)
            .map(head -> Quoted.of(head.strip()))
            .collect(Collectors.joining(", "));
    log.add(
        ProblemCode.COLUMN_MISSING,
        table.header().line(),
        0,
        "the columns " + heads + (size > MAX_HEADS ? " and more" : ""),
        expected,
        remedy);
  }

  private void take(int index, String written) {
    ColumnHeader head = ColumnHeader.of(written);
    Optional<ColumnSpec> match =
        specs.stream().filter(s -> s.name().equals(head.name())).findFirst();
    if (match.isPresent()) {
      takeKnown(index, written, head, match.get());
    } else if (!unitWithoutBrackets(index, written, head)) {
      ignore(index, written, head);
    }
  }

  private void takeKnown(int index, String written, ColumnHeader head, ColumnSpec spec) {
    if (!named.add(spec.name())) {
      problem(
          ProblemCode.COLUMN_TWICE,
          index,
          Quoted.of(written) + " again",
          "one column " + Quoted.of(spec.name()),
          "take one of them away, or give it another name");
    } else if (spec.units().isEmpty()) {
      takeWithoutUnit(index, written, head, spec);
    } else if (head.unit().isEmpty()) {
      noUnit(index, written, spec, UnitSpelling.suggest(head.inRoundBrackets(), spec.units()));
    } else if (spec.units().contains(head.unit())) {
      found.put(spec.name(), new Column(spec.name(), index, head.unit()));
    } else {
      unknownUnit(index, written, spec, UnitSpelling.suggest(head.unit(), spec.units()));
    }
  }

  private void unknownUnit(int index, String written, ColumnSpec spec, Optional<String> meant) {
    problem(
        ProblemCode.COLUMN_UNIT_UNKNOWN,
        index,
        Quoted.of(written),
        spec.unitsInWords(),
        meant
            .map(u -> "write " + Quoted.of(spec.head(u)))
            .orElse("convert the column and write its unit, as in " + Quoted.of(spec.head())));
    checkAnyway(index, spec, meant);
  }

  /**
   * Keeps a refused column with the most likely unit, so that the problems of its cells are
   * reported together with that of its header. Its values are not used, because the file is
   * refused.
   */
  private void checkAnyway(int index, ColumnSpec spec, Optional<String> meant) {
    meant.ifPresent(u -> found.put(spec.name(), new Column(spec.name(), index, u)));
  }

  private void takeWithoutUnit(int index, String written, ColumnHeader head, ColumnSpec spec) {
    if (head.unit().isEmpty() && head.inRoundBrackets().isEmpty()) {
      found.put(spec.name(), new Column(spec.name(), index, ""));
    } else {
      problem(
          ProblemCode.COLUMN_UNIT_UNKNOWN,
          index,
          Quoted.of(written),
          "no unit",
          "write " + Quoted.of(spec.name()));
    }
  }

  /** Detects {@code power kW} and {@code power [kW}: a known name without a pair of brackets. */
  private boolean unitWithoutBrackets(int index, String written, ColumnHeader head) {
    for (ColumnSpec spec : specs) {
      if (head.name().startsWith(spec.name() + " ") && !spec.units().isEmpty()) {
        String rest = head.name().substring(spec.name().length()).strip();
        boolean opened = rest.startsWith("[") || rest.startsWith("(");
        Optional<String> unit =
            UnitSpelling.suggest(opened ? rest.substring(1) : rest, spec.units());
        if (opened || unit.isPresent()) {
          named.add(spec.name());
          noUnit(index, written, spec, unit);
          return true;
        }
      }
    }
    return false;
  }

  private void noUnit(int index, String written, ColumnSpec spec, Optional<String> suggested) {
    Optional<String> meant =
        spec.units().size() == 1 ? Optional.of(spec.units().get(0)) : suggested;
    checkAnyway(index, spec, meant);
    problem(
        ProblemCode.COLUMN_WITHOUT_UNIT,
        index,
        Quoted.of(written),
        spec.unitsInWords() + " in square brackets",
        "write "
            + Quoted.of(meant.map(spec::head).orElse(spec.head()))
            + (meant.isPresent() ? "" : " if that is its unit"));
  }

  private void ignore(int index, String written, ColumnHeader head) {
    Optional<ColumnSpec> meant =
        Suggestion.of(head.name(), specs.stream().map(ColumnSpec::name).toList())
            .flatMap(name -> specs.stream().filter(s -> s.name().equals(name)).findFirst());
    problem(
        ProblemCode.COLUMN_IGNORED,
        index,
        written.isBlank() ? "a column without a head" : Quoted.of(written),
        "a column that this file can have; this one is ignored",
        meant
            .map(s -> "write " + Quoted.of(s.head()) + " if that is meant, else leave it")
            .orElse("leave it, if it is not needed"));
  }

  private void problem(ProblemCode code, int index, String was, String expected, String remedy) {
    log.add(code, table.header().line(), index + 1, was, expected, remedy);
  }
}
