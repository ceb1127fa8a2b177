package taperbook.input.mapping;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Severity;
import taperbook.input.cell.ColumnHeader;
import taperbook.input.cell.Grouping;
import taperbook.input.csv.CsvLayout;
import taperbook.input.csv.CsvParser;
import taperbook.input.csv.CsvTable;
import taperbook.input.csv.LayoutDetector;
import taperbook.input.csv.TextEncoding;
import taperbook.input.readings.ReadingsParser;
import taperbook.session.Channel;
import taperbook.session.InputFile;

/**
 * A proposed {@code columns.csv} for an external file.
 *
 * @param path path to save it under
 * @param lines its lines
 * @param leftOut each column that it leaves out, with the reason
 * @param errors number of errors that remain in the session when read with it
 */
public record ColumnMapProposal(
    String path, List<String> lines, List<String> leftOut, long errors) {
  private static final Set<String> NOTES =
      Set.of("note", "notes", "comment", "comments", "remark", "remarks", "bemerkung");
  private static final Set<ProblemCode> FOREIGN =
      Set.of(
          ProblemCode.TEXT_NOT_UTF8,
          ProblemCode.COLUMN_MISSING,
          ProblemCode.COLUMN_WITHOUT_UNIT,
          ProblemCode.COLUMN_UNIT_UNKNOWN,
          ProblemCode.ROW_TOO_LONG);

  public ColumnMapProposal {
    lines = List.copyOf(lines);
    leftOut = List.copyOf(leftOut);
  }

  /** Returns the paths of files whose problems indicate an external layout. */
  public static Set<String> wantedFor(Collection<Problem> problems) {
    return problems.stream()
        .filter(p -> FOREIGN.contains(p.code()))
        .map(p -> p.place().file())
        .collect(Collectors.toSet());
  }

  /** Returns the proposal with the number of errors of the whole session. */
  public ColumnMapProposal withErrors(long all) {
    return new ColumnMapProposal(path, lines, leftOut, all);
  }

  /** Returns the proposal as a file. */
  public InputFile file() {
    return new InputFile(path, bytes(lines));
  }

  private static byte[] bytes(List<String> lines) {
    return (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8);
  }

  /**
   * Returns true for a header such as {@code power [kW]}: an author who uses this form knows it,
   * and is helped more by messages about the other headers than by a guess that might read
   * kilojoules as kilowatt-hours.
   */
  private static boolean isInOurForm(String head) {
    ColumnHeader parts = ColumnHeader.of(head);
    return !parts.unit().isEmpty()
        && Arrays.stream(Channel.values()).anyMatch(c -> c.columnName().equals(parts.name()));
  }

  /** Returns the proposal, if a time and a channel can be identified. */
  public static Optional<ColumnMapProposal> of(InputFile file) {
    return LayoutDetector.of(file)
        .flatMap(
            layout ->
                CsvParser.read(file, layout)
                    .value()
                    .flatMap(table -> propose(file, layout, table)));
  }

  private static Optional<ColumnMapProposal> propose(
      InputFile file, CsvLayout layout, CsvTable table) {
    boolean ownPath = layout.leadingLines() == 0 && layout.encoding() == TextEncoding.UTF_8;
    if (ownPath && table.header().cells().stream().anyMatch(ColumnMapProposal::isInOurForm)) {
      return Optional.empty();
    }
    List<ForeignColumn> columns =
        IntStream.range(0, table.header().cells().size())
            .mapToObj(i -> new ForeignColumn(table, i))
            .toList();
    List<ProposedRow> time = TimeDetector.of(columns);
    Set<Integer> taken = new HashSet<>();
    time.forEach(row -> taken.add(row.index()));
    List<ProposedRow> channels = channels(columns, taken);
    if (time.isEmpty() || channels.isEmpty()) {
      return Optional.empty();
    }
    List<String> lines = new ArrayList<>(List.of(String.join(",", ColumnMapItems.HEADS)));
    List<ProposedRow> rows = new ArrayList<>(time);
    rows.addAll(channels);
    note(columns, taken).ifPresent(rows::add);
    lines.addAll(wholeFile(file, layout, table));
    rows.forEach(row -> lines.add(text(row, columns)));
    List<String> leftOut = new LeftOutColumns(columns, rows).sentences();
    String folder = file.path().substring(0, file.path().lastIndexOf('/') + 1);
    String path = folder + ColumnMap.FILE_NAME;
    return Optional.of(new ColumnMapProposal(path, lines, leftOut, errors(path, lines, table)));
  }

  private static Optional<ProposedRow> note(List<ForeignColumn> columns, Set<Integer> taken) {
    return columns.stream()
        .filter(c -> !taken.contains(c.index()) && c.words().stream().anyMatch(NOTES::contains))
        .findFirst()
        .map(c -> ProposedRow.of(ReadingsParser.NOTE, c.index(), "", 0));
  }

  /**
   * Assigns the best channel to each column and the best column to each channel, highest score
   * first.
   */
  private static List<ProposedRow> channels(List<ForeignColumn> columns, Set<Integer> taken) {
    Set<String> items = new HashSet<>();
    return columns.stream()
        .flatMap(column -> ChannelDetector.of(column).stream())
        .sorted(
            Comparator.comparingInt((ProposedRow row) -> -row.points())
                .thenComparingInt(ProposedRow::index))
        .filter(row -> !taken.contains(row.index()) && !items.contains(row.item()))
        .filter(row -> taken.add(row.index()) && items.add(row.item()))
        .sorted(Comparator.comparingInt(ProposedRow::index))
        .toList();
  }

  private static String text(ProposedRow row, List<ForeignColumn> columns) {
    ForeignColumn column = columns.get(row.index());
    boolean alone = columns.stream().filter(c -> c.head().equals(column.head())).count() == 1;
    String source = alone && !column.head().isEmpty() ? column.head() : "#" + (row.index() + 1);
    return row.text(source, column.marks());
  }

  private static List<String> wholeFile(InputFile file, CsvLayout layout, CsvTable table) {
    List<String> lines = new ArrayList<>();
    String name = file.path().substring(file.path().lastIndexOf('/') + 1);
    if (!name.equals(ColumnMap.DEFAULT_READINGS)) {
      lines.add("file," + name);
    }
    if (layout.encoding() != TextEncoding.UTF_8) {
      lines.add("encoding," + layout.encoding().words());
    }
    if (layout.leadingLines() > 0) {
      lines.add("leading lines," + layout.leadingLines());
    }
    if (layout.rowsOfUnits() > 0) {
      lines.add("rows of units," + layout.rowsOfUnits());
    }
    layout.delimiter().map(ColumnMapProposal::word).ifPresent(w -> lines.add("delimiter," + w));
    // A comma before three digits may be a thousands separator, so the decimal mark is stated only
    // if it is certain.
    boolean decimalComma =
        table.delimiter() == ','
            && table.rows().stream()
                .flatMap(row -> row.cells().stream())
                .map(String::strip)
                .anyMatch(cell -> cell.matches("[+-]?[0-9]+,[0-9]+") && !Grouping.isAlike(cell));
    if (decimalComma) {
      lines.add("decimal mark,comma");
    }
    return lines;
  }

  private static String word(char delimiter) {
    return switch (delimiter) {
      case ',' -> "comma";
      case ';' -> "semicolon";
      default -> "tab";
    };
  }

  private static long errors(String path, List<String> lines, CsvTable table) {
    Checked<ColumnMap> map =
        CsvParser.read(new InputFile(path, bytes(lines))).then(ColumnMapParser::check);
    ProblemLog log = new ProblemLog(table.file());
    List<Problem> problems = new ArrayList<>(map.problems());
    map.value()
        .ifPresent(
            m -> {
              ProblemLog mapLog = new ProblemLog(path);
              MappedTable mapped = new MappedTable(m, table, mapLog);
              problems.addAll(mapLog.list());
              if (!mapLog.hasErrors()) {
                mapped.readings(log).check();
              }
            });
    problems.addAll(log.list());
    return problems.stream().filter(p -> p.severity() == Severity.ERROR).count();
  }
}
