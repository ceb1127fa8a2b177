package taperbook.output.view;

import java.util.List;
import java.util.Optional;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.output.data.RowRuns;
import taperbook.plan.Basis;
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

  /** Returns the tables of these numbers. */
  NumberTable table() {
    return new NumberTable(this);
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

  /** Returns the formatter for the other unit of distance. */
  NumberFormatter other() {
    return other;
  }

  /** Returns true if numbers of a unit differ in the other unit of distance. */
  boolean differs(Unit unit) {
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
  static NumberView absent(String id) {
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
}
