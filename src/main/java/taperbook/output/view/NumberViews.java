package taperbook.output.view;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.output.data.RowRuns;
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
  private final NumberFormatter formatter;
  private final NumberFormatter other;
  private final CaveatMarks marks;
  private final String mainSession;

  NumberViews(ReportResult result, NumberFormatter formatter, CaveatMarks marks) {
    this.formatter = formatter;
    this.other = formatter.inOtherDistances();
    this.marks = marks;
    this.mainSession = result.main().session().name();
  }

  /** Returns the number of a session, or a placeholder if it has none with that id. */
  Map<String, Object> view(SessionResult session, String id) {
    return session.numbers().find(id).map(this::view).orElseGet(() -> absent(id));
  }

  /** Returns the numbers of a session with a role. */
  List<Map<String, Object>> views(SessionResult session, Role role) {
    return session.numbers().with(role).stream().map(this::view).toList();
  }

  /** Returns the numbers as {@link #views}, without withheld ones. */
  List<Map<String, Object>> measured(SessionResult session, Role role) {
    return session.numbers().with(role).stream()
        .filter(n -> n.estimate().isPresent())
        .map(this::view)
        .toList();
  }

  Map<String, Object> view(ReportNumber number) {
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("id", number.id());
    view.put("anchor", anchor(number));
    view.put("label", number.label());
    view.put("present", true);
    view.put("measured", number.estimate().isPresent());
    view.put("value", formatter.value(number));
    view.put("range", formatter.range(number));
    view.put("between", formatter.between(number).orElse(""));
    view.put("spread", formatter.spread(number).orElse(""));
    view.put("exact", formatter.range(number).equals(Texts.of("wording.exact")));
    view.put("bounds", number.outcome().fold(m -> m.coverage() == 1, w -> false));
    view.put("basis", basis(number.metric().basis()));
    view.put("session", number.origin().session());
    view.put("rows", RowRuns.words(number.origin().rows()));
    view.put("method", number.method().title());
    view.put("marks", marks.of(number.caveats()));
    view.put("cautions", marks.sentences(number.caveats()));
    if (differs(number.unit())) {
      view.put("other", Map.of("value", other.value(number), "range", other.range(number)));
    }
    view.put("withheld", number.withheld().orElse(""));
    view.put("coverage", number.outcome().fold(NumberViews::coverage, w -> ""));
    return view;
  }

  /** Returns the formatter for the other unit of distance. */
  NumberFormatter other() {
    return other;
  }

  /** Returns true if numbers of a unit differ in the other unit of distance. */
  boolean differs(Unit unit) {
    return formatter.shown(unit) != other.shown(unit);
  }

  /** Returns one side of a check, or a quantity of a leg. */
  Map<String, Object> view(String label, Estimate estimate, Unit unit) {
    return Map.of(
        "label",
        label,
        "value",
        formatter.value(estimate, unit),
        "range",
        formatter.range(estimate.bounds(), unit),
        "between",
        formatter.between(estimate.bounds(), unit));
  }

  private String anchor(ReportNumber number) {
    String session = number.origin().session();
    String against = number.origin().against();
    return "number-"
        + (session.equals(mainSession) ? "" : session + "-")
        + (against.isEmpty() ? "" : "against-" + against + "-")
        + number.id();
  }

  /** Returns a placeholder. */
  static Map<String, Object> absent(String id) {
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("id", id);
    view.put("present", false);
    view.put("measured", false);
    view.put("exact", false);
    view.put("bounds", false);
    for (String part :
        List.of(
            "anchor",
            "label",
            "range",
            "shown",
            "ends",
            "between",
            "spread",
            "basis",
            "session",
            "method",
            "withheld",
            "coverage")) {
      view.put(part, "");
    }
    view.put("value", "\u2013");
    view.put("rows", List.of());
    view.put("marks", List.of());
    view.put("cautions", List.of());
    return view;
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
