package taperbook.chart.model;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import taperbook.format.Labels;
import taperbook.format.NumberFormatter;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.result.Numbers;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;

/** A report's numbers as figures say them: each with its bounds, or with the reason for none. */
public final class FigureText {
  private final ReportResult result;
  private final Numbers numbers;
  private final NumberFormatter wording;

  public FigureText(ReportResult result) {
    this(result, result.main().numbers());
  }

  /**
   * Some of a report's numbers.
   *
   * @param numbers those of one of its sessions, or of a pair of them
   */
  public FigureText(ReportResult result, Numbers numbers) {
    this.result = result;
    this.numbers = numbers;
    this.wording = new NumberFormatter(result.plan().style());
  }

  public ReportResult result() {
    return result;
  }

  public NumberFormatter wording() {
    return wording;
  }

  public ReportPlan.Wishes wishes() {
    return result.plan().wishes();
  }

  /** The window of the headline. */
  public SocWindow window() {
    return wishes().windows().get(0);
  }

  /** The words around a chart of the reported session. */
  public Heading heading(String finding, String quantity) {
    return new Heading(finding, quantity, Credit.of(result));
  }

  /** The words around a chart of the car, and not of the reported session. */
  public Heading headingOfCar(String finding, String quantity) {
    return new Heading(finding, quantity, Credit.ofCar(result));
  }

  /** The value as one speaks it, if there is one. */
  public Optional<String> about(String id) {
    return measured(id).map(wording::about);
  }

  public Optional<Estimate> estimate(String id) {
    return numbers.estimate(id);
  }

  /** The value with its unit, if there is one. */
  public Optional<String> value(String id) {
    return measured(id).map(wording::value);
  }

  /** How far the truth may lie from the value, if there is one, as short as a label needs. */
  public Optional<String> aside(String id) {
    return measured(id).flatMap(n -> n.estimate().map(e -> aside(e, n.unit())));
  }

  private String aside(Estimate estimate, Unit unit) {
    return wording.isTwoSided(estimate, unit)
        ? wording.range(estimate.bounds(), unit)
        : wording.spread(estimate, unit);
  }

  private Optional<String> spread(String id) {
    return numbers.find(id).flatMap(wording::spread);
  }

  /** The value and in brackets its spread, if there is one. */
  public Optional<String> full(String id) {
    return value(id).flatMap(value -> spread(id).map(spread -> value + " (" + spread + ")"));
  }

  /** The value with its spread, or why there is none; empty if nobody asked for it. */
  public Optional<String> outcome(String id) {
    Optional<String> reason = numbers.find(id).flatMap(ReportNumber::withheld);
    return full(id).or(() -> reason.map(r -> Labels.of("wording.withheld", r)));
  }

  /** A sentence that begins as told and goes on with the value, or says why there is none. */
  public Optional<String> sentence(String beginning, String subject, String id) {
    return full(id).map(value -> beginning + " " + value + ".").or(() -> withheld(subject, id));
  }

  /** A sentence that says why there is no value, if it was withheld. */
  public Optional<String> withheld(String subject, String id) {
    return numbers
        .find(id)
        .flatMap(ReportNumber::withheld)
        .map(reason -> subject + " is withheld: " + reason + ".");
  }

  /** A time in words, to the nearest minute. */
  public String minutes(double seconds) {
    return time(60 * Math.rint(seconds / 60));
  }

  /** A time in seconds, in words. */
  public String time(double seconds) {
    return wording.value(Estimate.exactly(Math.rint(seconds)), Unit.SECOND);
  }

  /** An amount to one decimal at most. */
  public static String plain(double amount) {
    BigDecimal rounded = new BigDecimal(amount).setScale(1, RoundingMode.HALF_EVEN);
    boolean whole = rounded.stripTrailingZeros().scale() <= 0;
    String text = (whole ? rounded.setScale(0, RoundingMode.HALF_EVEN) : rounded).toPlainString();
    return text.replace('-', '\u2212');
  }

  /** A text that begins with a capital. */
  public static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** Sentences that there are, in a row. */
  public static String sentences(List<Optional<String>> parts) {
    return String.join(" ", parts.stream().flatMap(Optional::stream).toList());
  }

  private Optional<ReportNumber> measured(String id) {
    return numbers.find(id).filter(n -> n.estimate().isPresent());
  }
}
