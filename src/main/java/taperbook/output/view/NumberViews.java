package taperbook.output.view;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import taperbook.format.ColumnFormat;
import taperbook.format.NumberFormatter;
import taperbook.format.SessionNames;
import taperbook.i18n.Texts;
import taperbook.output.data.RowRuns;
import taperbook.output.view.NumberTable.Cell;
import taperbook.output.view.NumberTable.Head;
import taperbook.output.view.NumberTable.OtherUnit;
import taperbook.output.view.NumberTable.Row;
import taperbook.output.view.NumberTable.RowView;
import taperbook.output.view.NumberTable.Shown;
import taperbook.plan.Basis;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.Role;
import taperbook.result.SessionResult;

/** Formats numbers for templates: every part is a text. */
final class NumberViews {
  /** The average whose label does not state that it is one over time. */
  private static final String SESSION_AVERAGE = "average_power_session";

  private final ReportResult result;
  private final NumberFormatter formatter;
  private final NumberFormatter other;
  private final CaveatMarks marks;

  NumberViews(ReportResult result) {
    this.result = result;
    this.formatter = new NumberFormatter(result.plan().style());
    this.other = formatter.inOtherDistances();
    this.marks = new CaveatMarks(result);
  }

  ReportResult result() {
    return result;
  }

  NumberFormatter formatter() {
    return formatter;
  }

  CaveatMarks marks() {
    return marks;
  }

  /** Returns the number of a session, or a placeholder if it has none with that id. */
  NumberView view(SessionResult session, String id) {
    return session.numbers().find(id).map(this::view).orElseGet(() -> absent(id));
  }

  /** Returns the numbers of a session with a role. */
  List<NumberView> views(SessionResult session, Role role) {
    return session.numbers().with(role).stream().map(this::view).toList();
  }

  /** Returns the numbers as {@link #views}, without withheld ones. */
  List<NumberView> measured(SessionResult session, Role role) {
    return views(session, role).stream().filter(NumberView::measured).toList();
  }

  NumberView view(ReportNumber number) {
    return view(number, number.label());
  }

  /** Returns a headline number; the label of an average states what it is an average over. */
  NumberView headline(ReportNumber number) {
    return view(
        number,
        number.id().equals(SESSION_AVERAGE)
            ? Texts.of("page.headline_format.over_time", number.label())
            : number.label());
  }

  private NumberView view(ReportNumber number, String label) {
    String range = formatter.range(number);
    return new NumberView(
        number.id(),
        anchor(number),
        label,
        true,
        number.estimate().isPresent(),
        new NumberView.Amount(
            formatter.value(number),
            range,
            formatter.between(number).orElse(""),
            formatter.spread(number).orElse(""),
            range.equals(Texts.of("wording.exact")),
            number.outcome().fold(m -> m.coverage() == 1, w -> false),
            number.outcome().fold(NumberViews::coverage, w -> "")),
        new NumberView.Origin(
            basis(number.metric().basis()),
            number.origin().session(),
            RowRuns.words(number.origin().rows()),
            number.method().title()),
        marks.of(number.caveats()),
        marks.sentences(number.caveats()),
        differs(number.unit())
            ? Optional.of(new NumberView.Plain(other.value(number), other.range(number)))
            : Optional.empty(),
        number.withheld().orElse(""));
  }

  /** Returns true if numbers of a unit differ in the other unit of distance. */
  private boolean differs(Unit unit) {
    return formatter.shown(unit) != other.shown(unit);
  }

  private String anchor(ReportNumber number) {
    String session = number.origin().session();
    String against = number.origin().against();
    return "number-"
        + (session.equals(result.main().session().name()) ? "" : session + "-")
        + (against.isEmpty() ? "" : "against-" + against + "-")
        + number.id();
  }

  /** Returns a placeholder. */
  private static NumberView absent(String id) {
    return new NumberView(
        id,
        "",
        "",
        false,
        false,
        new NumberView.Amount("\u2013", "", "", "", false, false, ""),
        new NumberView.Origin("", "", List.of(), ""),
        List.of(),
        List.of(),
        Optional.empty(),
        "");
  }

  private static String basis(Basis basis) {
    return switch (basis) {
      case READINGS -> Texts.of("page.number_views.from_readings");
      case DISPLAYED -> Texts.of("page.number_views.as_displayed");
      case DRIVEN, ENERGY, RATED -> Texts.of("page.number_views.basis", basis.words());
    };
  }

  private static String coverage(Outcome.Measured measured) {
    return measured.coverage() == 1
        ? Texts.of("page.number_views.bounds")
        : Texts.of("page.number_views.coverage", share(measured.coverage()));
  }

  /** Formats a share in per cent. */
  static String share(double share) {
    return Math.round(share * 100) + "\u00a0%";
  }

  /** Returns a table whose columns have a unit and a precision each. */
  NumberTable<RowView> byColumn(String first, List<String> heads, List<Row> rows) {
    List<Formats> formats =
        IntStream.range(0, heads.size())
            .mapToObj(i -> formats(rows.stream().map(r -> r.numbers().get(i)).toList()))
            .toList();
    List<String> units = formats.stream().map(Formats::unit).toList();
    boolean differs = formats.stream().anyMatch(t -> t.other().isPresent());
    boolean one = heads.size() > 1 && units.stream().distinct().count() == 1 && !differs;
    return new NumberTable<>(
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
  NumberTable<RowView> byRow(String first, List<String> heads, List<Row> rows) {
    return new NumberTable<>(
        first, heads.stream().map(Head::of).toList(), "", rows.stream().map(this::row).toList());
  }

  /**
   * Returns a table with one row per number with a role and one column per session, without rows
   * and columns that have no value.
   *
   * @param wanted false for a table without rows
   */
  NumberTable<RowView> bySession(boolean wanted, Role role) {
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
        Optional.of(new ColumnFormat(present, formatter)),
        differs(present.get(0).unit())
            ? Optional.of(new ColumnFormat(present, other))
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
              .orElseGet(() -> new Cell(absent(""), new Shown("", "", "", ""), Optional.empty())));
    }
    return cells;
  }

  private Cell cell(ReportNumber number, Formats formats) {
    return new Cell(
        view(number),
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
