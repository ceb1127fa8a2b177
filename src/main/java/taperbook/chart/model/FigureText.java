package taperbook.chart.model;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.result.Numbers;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;

/** Formats a report's numbers for figures: each with its interval, or with the reason for none. */
public final class FigureText {
  private final ReportResult result;
  private final Numbers numbers;
  private final NumberFormatter formatter;

  public FigureText(ReportResult result) {
    this(result, result.main().numbers());
  }

  /**
   * Creates the texts of some of a report's numbers.
   *
   * @param numbers those of one of its sessions, or of a pair
   */
  public FigureText(ReportResult result, Numbers numbers) {
    this.result = result;
    this.numbers = numbers;
    this.formatter = new NumberFormatter(result.plan().style());
  }

  public ReportResult result() {
    return result;
  }

  public NumberFormatter formatter() {
    return formatter;
  }

  public ReportPlan.Wishes wishes() {
    return result.plan().wishes();
  }

  /** Returns the headline window. */
  public SocWindow window() {
    return wishes().windows().get(0);
  }

  /** Returns the title texts of a chart of the reported session. */
  public Heading heading(String finding, String quantity) {
    return new Heading(finding, quantity, Credit.of(result));
  }

  /** Returns the title texts of a chart of the car rather than of the reported session. */
  public Heading headingOfCar(String finding, String quantity) {
    return new Heading(finding, quantity, Credit.ofCar(result));
  }

  /** Returns the rounded value for running text, if there is one. */
  public Optional<String> about(String id) {
    return numbers.measured(id).map(formatter::about);
  }

  public Optional<Estimate> estimate(String id) {
    return numbers.estimate(id);
  }

  /** Returns the value with its unit, if there is one. */
  public Optional<String> value(String id) {
    return numbers.measured(id).map(formatter::value);
  }

  /** Returns the uncertainty of the value, if there is one, in the short form of a label. */
  public Optional<String> aside(String id) {
    return numbers.measured(id).flatMap(n -> n.estimate().map(e -> aside(e, n.unit())));
  }

  private String aside(Estimate estimate, Unit unit) {
    return formatter.isTwoSided(estimate, unit)
        ? formatter.range(estimate.bounds(), unit)
        : formatter.spread(estimate, unit);
  }

  private Optional<String> spread(String id) {
    return numbers.find(id).flatMap(formatter::spread);
  }

  /** Returns the value with its uncertainty in brackets, if there is one. */
  public Optional<String> full(String id) {
    return value(id).flatMap(value -> spread(id).map(spread -> value + " (" + spread + ")"));
  }

  /** Returns the value with its uncertainty, or the reason for none; empty if not requested. */
  public Optional<String> outcome(String id) {
    Optional<String> reason = numbers.find(id).flatMap(ReportNumber::withheld);
    return full(id).or(() -> reason.map(r -> Texts.of("wording.withheld", r)));
  }

  /** Returns a sentence with the given beginning and the value, or the reason why there is none. */
  public Optional<String> sentence(String beginning, String subject, String id) {
    return full(id).map(value -> beginning + " " + value + ".").or(() -> withheld(subject, id));
  }

  /** Returns a sentence with the reason why a value was withheld, if it was. */
  public Optional<String> withheld(String subject, String id) {
    return numbers
        .find(id)
        .flatMap(ReportNumber::withheld)
        .map(reason -> Texts.of("figure.figure_text.is_withheld", subject, reason));
  }

  /** Formats a time to the nearest minute. */
  public String minutes(double seconds) {
    return time(60 * Math.rint(seconds / 60));
  }

  /** Formats a time in seconds. */
  public String time(double seconds) {
    return formatter.value(Estimate.exactly(Math.rint(seconds)), Unit.SECOND);
  }

  /** Formats an amount with at most one decimal. */
  public static String plain(double amount) {
    BigDecimal rounded = new BigDecimal(amount).setScale(1, RoundingMode.HALF_EVEN);
    boolean whole = rounded.stripTrailingZeros().scale() <= 0;
    String text = (whole ? rounded.setScale(0, RoundingMode.HALF_EVEN) : rounded).toPlainString();
    return text.replace('-', '\u2212');
  }

  /** Capitalises the first letter of a text. */
  public static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** Describes an axis with its range. */
  public static String range(String what, Axis axis) {
    return Texts.of("figure.session_phrases.from_to", what, whole(axis.min()), whole(axis.max()));
  }

  /** Truncates an amount to a tenth, or to a whole number if it is ten or more. */
  private static String whole(double amount) {
    double step = Math.abs(amount) < 10 ? 0.1 : 1;
    double cut = Math.signum(amount) * Math.floor(Math.abs(amount) / step + 1e-9) * step;
    return plain(cut);
  }

  /** Formats a state of charge. */
  public static String percent(double soc) {
    return plain(soc) + "\u00a0%";
  }

  /** Joins the sentences that are present. */
  public static String sentences(List<Optional<String>> parts) {
    return String.join(" ", parts.stream().flatMap(Optional::stream).toList());
  }
}
