package taperbook.output.view;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import taperbook.format.ColumnFormat;
import taperbook.format.SessionNames;
import taperbook.i18n.Texts;
import taperbook.quantity.Estimate;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.Role;
import taperbook.result.SessionResult;

/** Tables of numbers for a template and for an article. */
public final class NumberTable {
  private final NumberViews views;

  NumberTable(NumberViews views) {
    this.views = views;
  }

  /**
   * The contents of a row.
   *
   * @param label its heading
   * @param numbers its numbers; empty if a column has none
   */
  record Row(String label, List<Optional<ReportNumber>> numbers) {
    Row {
      numbers = List.copyOf(numbers);
    }

    boolean hasEstimate() {
      return numbers.stream().anyMatch(n -> n.flatMap(ReportNumber::estimate).isPresent());
    }
  }

  /**
   * A table.
   *
   * @param first heading of its first column
   * @param unit the unit of all columns, or empty
   */
  public record Table<R>(String first, List<Head> heads, String unit, List<R> rows) {}

  /**
   * The heading of a column or a row with its unit, which may be empty.
   *
   * @param other its unit in the other unit of distance, if that differs
   */
  public record Head(String label, String unit, Optional<OtherUnit> other) {
    static Head of(String label) {
      return new Head(label, "", Optional.empty());
    }
  }

  /** The unit of a column in the other unit of distance. */
  public record OtherUnit(String unit) {}

  /** A row of a table. */
  public record RowView(@Unwrapped Head head, List<Cell> cells) {}

  /** A number with its texts in a table. */
  public record Cell(@Unwrapped NumberView number, @Unwrapped Shown shown, Optional<Shown> other) {}

  /** A value, its interval, and the ends of the interval, without the unit. */
  public record Shown(String shown, String ends, String low, String high) {}

  /** Returns a table whose columns have a unit and a precision each. */
  Table<RowView> byColumn(String first, List<String> heads, List<Row> rows) {
    List<Formats> formats =
        IntStream.range(0, heads.size())
            .mapToObj(i -> formats(rows.stream().map(r -> r.numbers().get(i)).toList()))
            .toList();
    List<String> units = formats.stream().map(Formats::unit).toList();
    boolean differs = formats.stream().anyMatch(t -> t.other().isPresent());
    boolean one = heads.size() > 1 && units.stream().distinct().count() == 1 && !differs;
    return new Table<>(
        first,
        IntStream.range(0, heads.size())
            .mapToObj(i -> one ? Head.of(heads.get(i)) : formats.get(i).head(heads.get(i)))
            .toList(),
        one ? units.get(0) : "",
        rows.stream()
            .map(r -> new RowView(Head.of(r.label()), cells(r.numbers(), formats)))
            .toList());
  }

  /** Returns a table whose rows have a unit and a precision each; labels include the unit. */
  Table<RowView> byRow(String first, List<String> heads, List<Row> rows) {
    return new Table<>(
        first, heads.stream().map(Head::of).toList(), "", rows.stream().map(this::row).toList());
  }

  /**
   * Returns a table with one row per number with a role and one column per session, without rows
   * and columns that have no value.
   *
   * @param wanted false for a table without rows
   */
  Table<RowView> bySession(boolean wanted, Role role) {
    ReportResult result = views.result();
    Set<String> ids = new LinkedHashSet<>();
    if (wanted) {
      result.sessions().forEach(s -> s.numbers().with(role).forEach(n -> ids.add(n.id())));
    }
    List<SessionResult> sessions =
        result.sessions().stream()
            .filter(s -> ids.stream().anyMatch(id -> s.numbers().estimate(id).isPresent()))
            .toList();
    List<Row> rows = new ArrayList<>();
    for (String id : ids) {
      List<Optional<ReportNumber>> found =
          sessions.stream().map(s -> s.numbers().find(id)).toList();
      found.stream()
          .flatMap(Optional::stream)
          .filter(n -> n.estimate().isPresent())
          .findFirst()
          .ifPresent(n -> rows.add(new Row(n.label(), found)));
    }
    List<String> heads =
        SessionNames.heads(result.sessions().stream().map(SessionResult::session).toList());
    return byRow(
        Texts.of("head.number"),
        sessions.stream().map(s -> heads.get(result.sessions().indexOf(s))).toList(),
        rows);
  }

  /** Returns a row whose cells share a unit and a precision. */
  RowView row(Row row) {
    Formats formats = formats(row.numbers());
    return new RowView(
        formats.head(row.label()),
        cells(row.numbers(), Collections.nCopies(row.numbers().size(), formats)));
  }

  private Formats formats(List<Optional<ReportNumber>> numbers) {
    List<ReportNumber> present = numbers.stream().flatMap(Optional::stream).toList();
    if (present.isEmpty()) {
      return new Formats(Optional.empty(), Optional.empty());
    }
    return new Formats(
        Optional.of(new ColumnFormat(present, views.formatter())),
        views.differs(present.get(0).unit())
            ? Optional.of(new ColumnFormat(present, views.other()))
            : Optional.empty());
  }

  private List<Cell> cells(List<Optional<ReportNumber>> numbers, List<Formats> formats) {
    List<Cell> cells = new ArrayList<>();
    for (int i = 0; i < numbers.size(); i++) {
      Formats texts = formats.get(i);
      cells.add(
          numbers
              .get(i)
              .map(n -> cell(n, texts))
              .orElseGet(
                  () ->
                      new Cell(
                          NumberViews.absent(""), new Shown("", "", "", ""), Optional.empty())));
    }
    return cells;
  }

  private Cell cell(ReportNumber number, Formats formats) {
    return new Cell(
        views.view(number),
        shown(number, formats.own().orElseThrow()),
        formats.other().map(other -> shown(number, other)));
  }

  /** Returns the texts of a cell; a count or a chosen point has no interval. */
  private static Shown shown(ReportNumber number, ColumnFormat text) {
    Optional<Estimate> wide = number.estimate().filter(e -> e.bounds().width() > 0);
    return new Shown(
        number.estimate().map(text::value).orElse(""),
        wide.map(text::range).orElse(""),
        wide.map(text::low).orElse(""),
        wide.map(text::high).orElse(""));
  }

  /**
   * The formats of a column or a row.
   *
   * @param own in the report's units; empty if there is no number
   * @param other in the other unit of distance; empty if that is the same
   */
  private record Formats(Optional<ColumnFormat> own, Optional<ColumnFormat> other) {
    String unit() {
      return own.map(ColumnFormat::unit).orElse("");
    }

    Head head(String label) {
      return new Head(label, unit(), other.map(o -> new OtherUnit(o.unit())));
    }
  }
}
