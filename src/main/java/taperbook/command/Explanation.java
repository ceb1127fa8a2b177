package taperbook.command;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import taperbook.format.NumberFormatter;
import taperbook.format.PlainDigits;
import taperbook.i18n.Texts;
import taperbook.plan.Basis;
import taperbook.quantity.Estimate;
import taperbook.result.Assumption;
import taperbook.result.Contribution;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.workspace.InputRows;

/** Explains how a number was computed: value, method, assumptions, budget, rows and caveats. */
final class Explanation {
  /** Column at which the text of a labelled line begins. */
  private static final int TEXT_AT = 14;

  private static final String SYMBOLS = Texts.of("command.explanation.t_time_in_s_q");

  private final ReportNumber number;
  private final List<String> cautions;
  private final NumberFormatter wording;
  private final InputRows rows;
  private final IndentedText text;

  private Explanation(
      ReportNumber number,
      List<String> cautions,
      NumberFormatter wording,
      InputRows rows,
      int width) {
    this.text = new IndentedText(width);
    this.number = number;
    this.cautions = List.copyOf(cautions);
    this.wording = wording;
    this.rows = rows;
  }

  /**
   * Returns the lines of the explanation.
   *
   * @param width line width of the terminal, characters; at most 80 are used
   */
  static List<String> lines(
      ReportNumber number,
      List<String> cautions,
      NumberFormatter wording,
      InputRows rows,
      int width) {
    Explanation explanation = new Explanation(number, cautions, wording, rows, width);
    explanation.head();
    explanation.method();
    explanation.assumptions();
    explanation.budget();
    explanation.rows();
    explanation.caveats();
    return explanation.text.lines();
  }

  private void head() {
    text.paragraph(number.label());
    text.gap();
    number
        .outcome()
        .fold(
            m -> {
              value(m);
              return true;
            },
            w -> {
              line(
                  Texts.of("command.explanation.value"),
                  Texts.of("command.explanation.withheld", w.reason()));
              return false;
            });
    line(Texts.of("command.explanation.basis"), basis(number.metric().basis()));
    line(Texts.of("command.explanation.session"), number.origin().session());
    if (!number.origin().against().isEmpty()) {
      line(Texts.of("command.explanation.against"), number.origin().against());
    }
    line(Texts.of("command.explanation.id"), number.id());
  }

  /** Returns the name of a basis: driven and rated are words of the front matter. */
  private static String basis(Basis basis) {
    return switch (basis) {
      case READINGS -> Texts.of("command.explanation.readings");
      case ENERGY -> Texts.of("command.explanation.energy");
      case DISPLAYED -> Texts.of("command.explanation.displayed");
      case DRIVEN, RATED -> basis.words();
    };
  }

  private void value(Outcome.Measured measured) {
    line(Texts.of("command.explanation.value"), wording.outcome(number));
    if (measured.estimate().bounds().width() > 0) {
      line(
          Texts.of("command.explanation.interval"),
          wording.range(number) + "; " + coverage(measured));
    } else {
      line(Texts.of("command.explanation.interval"), Texts.of("command.explanation.none"));
    }
    Estimate e = measured.estimate();
    line(
        Texts.of("command.explanation.unrounded"),
        Texts.of(
            "command.explanation.from_to",
            joined(PlainDigits.of(e.value(), 6), NumberFormatter.name(number.unit())),
            PlainDigits.of(e.bounds().low(), 6),
            PlainDigits.of(e.bounds().high(), 6)));
  }

  /** Only a simulated number has a budget; the definition determines other intervals. */
  private static String coverage(Outcome.Measured measured) {
    if (measured.coverage() == 1) {
      return Texts.of("command.explanation.bounds_that_hold_if_assumptions");
    }
    String interval =
        Texts.of("command.explanation.coverage_interval", percent(measured.coverage()));
    return measured.budget().isEmpty()
        ? Texts.of("command.explanation.by_method_below", interval)
        : Texts.of("command.explanation.by_monte_carlo_jcgm_101", interval);
  }

  private void method() {
    heading(Texts.of("command.explanation.how_it_is_computed"));
    line(Texts.of("command.explanation.method"), number.method().title());
    line(Texts.of("command.explanation.definition"), number.method().definition());
    line(Texts.of("command.explanation.formula"), number.method().formula());
    line(Texts.of("command.explanation.symbols"), SYMBOLS);
  }

  private void assumptions() {
    heading(Texts.of("command.explanation.what_it_takes_for_granted"));
    for (Assumption assumption : number.method().assumptions()) {
      bullet(assumption.sentence() + " (" + assumption.source() + ")");
    }
  }

  private void budget() {
    List<Contribution> budget =
        number.outcome().fold(Outcome.Measured::budget, w -> List.<Contribution>of());
    if (budget.isEmpty()) {
      return;
    }
    heading(Texts.of("command.explanation.what_its_uncertainty_is_made"));
    text.paragraph("  ", 2, Texts.of("command.explanation.standard_uncertainty_with_one_source"));
    text.gap();
    int widest = budget.stream().mapToInt(c -> c.source().words().length()).max().orElse(0);
    budget.forEach(c -> text.paragraph(contribution(c, widest), 4, ""));
    text.gap();
    String advice = budget.get(0).source().advice();
    text.paragraph("  ", 2, Texts.of("command.explanation.to_know_it_better_next", advice));
  }

  private String contribution(Contribution contribution, int widest) {
    double amount = wording.shownAmount(contribution.standardUncertainty(), number.unit());
    String unit = NumberFormatter.name(wording.shown(number.unit()));
    String share =
        contribution.share() > 0 && contribution.share() < 0.005
            ? "< 1\u00a0%"
            : percent(contribution.share());
    String row = "  %-" + widest + "s %11s %6s";
    return String.format(
        Locale.ROOT,
        row,
        contribution.source().words(),
        joined(PlainDigits.of(amount, 2), unit),
        share);
  }

  private void rows() {
    if (!number.origin().rows().isEmpty()) {
      heading(Texts.of("command.explanation.rows_it_rests_on"));
      rows.texts(number.origin().rows()).forEach(row -> text.paragraph("  ", 6, row));
    }
  }

  private void caveats() {
    if (!number.caveats().isEmpty()) {
      heading(Texts.of("command.explanation.what_to_know_before_using"));
      for (int i = 0; i < cautions.size(); i++) {
        bullet(number.caveats().get(i).kind().title() + ": " + cautions.get(i));
      }
    }
  }

  private void heading(String heading) {
    text.gap();
    text.paragraph(heading);
    text.gap();
  }

  private void line(String label, String words) {
    String lead = "  " + label + " ".repeat(Math.max(1, TEXT_AT - 2 - label.length()));
    text.paragraph(lead, TEXT_AT, words);
  }

  private void bullet(String words) {
    text.paragraph("  - ", 4, words);
  }

  private static String joined(String amount, String unit) {
    return unit.isEmpty() ? amount : amount + "\u00a0" + unit;
  }

  private static String percent(double share) {
    return new BigDecimal(share * 100).setScale(0, RoundingMode.HALF_EVEN) + "\u00a0%";
  }
}
