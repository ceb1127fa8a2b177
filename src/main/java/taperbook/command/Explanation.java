package taperbook.command;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import taperbook.format.NumberFormatter;
import taperbook.format.PlainDigits;
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

  private static final String SYMBOLS =
      "t time in s, q state of charge in %, P power in kW, E and S energy in kWh, D distance and R"
          + " range in km, c consumption in Wh/km; x[i] is reading i of n, x(t) the value of a"
          + " course at t";

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
              line("Value", "withheld: " + w.reason());
              return false;
            });
    line("Basis", number.metric().basis().words());
    line("Session", number.origin().session());
    if (!number.origin().against().isEmpty()) {
      line("Against", number.origin().against());
    }
    line("Id", number.id());
  }

  private void value(Outcome.Measured measured) {
    line("Value", wording.outcome(number));
    if (measured.estimate().bounds().width() > 0) {
      line("Interval", wording.range(number) + "; " + coverage(measured));
    } else {
      line("Interval", "none");
    }
    Estimate e = measured.estimate();
    line(
        "Unrounded",
        joined(PlainDigits.of(e.value(), 6), NumberFormatter.name(number.unit()))
            + " from "
            + PlainDigits.of(e.bounds().low(), 6)
            + " to "
            + PlainDigits.of(e.bounds().high(), 6));
  }

  /** Only a simulated number has a budget; the definition determines other intervals. */
  private static String coverage(Outcome.Measured measured) {
    if (measured.coverage() == 1) {
      return "bounds that hold if the assumptions do";
    }
    String interval = "a " + percent(measured.coverage()) + " coverage interval";
    return measured.budget().isEmpty()
        ? interval + ", by the method below"
        : interval + " by Monte Carlo (JCGM 101:2008)";
  }

  private void method() {
    heading("How it is computed");
    line("Method", number.method().title());
    line("Definition", number.method().definition());
    line("Formula", number.method().formula());
    line("Symbols", SYMBOLS);
  }

  private void assumptions() {
    heading("What it takes for granted");
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
    heading("What its uncertainty is made of");
    text.paragraph(
        "  ", 2, "Standard uncertainty with one source alone; share of the sum of all squares.");
    text.gap();
    int widest = budget.stream().mapToInt(c -> c.source().words().length()).max().orElse(0);
    budget.forEach(c -> text.paragraph(contribution(c, widest), 4, ""));
    text.gap();
    String advice = budget.get(0).source().advice();
    text.paragraph("  ", 2, "To know it better next time: " + advice + ".");
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
      heading("The rows it rests on");
      rows.texts(number.origin().rows()).forEach(row -> text.paragraph("  ", 6, row));
    }
  }

  private void caveats() {
    if (!number.caveats().isEmpty()) {
      heading("What to know before using it");
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
    String lead = "  " + label + " ".repeat(TEXT_AT - 2 - label.length());
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
