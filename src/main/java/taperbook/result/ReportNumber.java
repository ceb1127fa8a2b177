package taperbook.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.i18n.Message;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.session.Caveat;
import taperbook.session.Origin;

/**
 * One number of a report. Numbers reach a reader only in this form.
 *
 * @param metric its definition
 * @param outcome value and interval, or the reason why there is none
 * @param origin session and rows
 * @param caveats limitations that a reader needs to know
 */
public record ReportNumber(Metric metric, Outcome outcome, Origin origin, List<Caveat> caveats) {
  public ReportNumber {
    caveats = List.copyOf(caveats);
  }

  /** Returns the id of the number. */
  public String id() {
    return metric.id();
  }

  /** Returns the description of the number. */
  public String label() {
    return metric.label();
  }

  /** Returns the unit of the outcome, a base unit. */
  public Unit unit() {
    return metric.unit();
  }

  /** Returns how it was computed. */
  public Method method() {
    return metric.method();
  }

  /** Returns the value with its interval, if present. */
  public Optional<Estimate> estimate() {
    return outcome.estimateIfMeasured();
  }

  /** Returns the same number with one more caveat. */
  public ReportNumber with(Caveat caveat) {
    List<Caveat> all = new ArrayList<>(caveats);
    all.add(caveat);
    return new ReportNumber(metric, outcome, origin, all);
  }

  /** Returns the caveats as sentences. */
  public List<String> cautions() {
    return caveats.stream().map(Caveat::sentence).toList();
  }

  /** Returns the reason why there is no value, if there is none. */
  public Optional<String> withheld() {
    return reason().map(Message::text);
  }

  /** The reason why there is no value, with its code and arguments. */
  public Optional<Message> reason() {
    return outcome.reasonIfWithheld();
  }

  /**
   * Returns true if this number and another, both measured, differ by more than the uncertainty of
   * their difference. That uncertainty is the root of the sum of squares of the two facing
   * half-intervals if both are coverage intervals, and their sum if either is a bound.
   *
   * @see <a href="https://doi.org/10.59161/JCGM100-2008E">JCGM 100:2008, 5.1.2, for independent
   *     quantities</a>
   */
  public boolean differsSignificantly(ReportNumber other) {
    return differsSignificantly(other, 0);
  }

  /**
   * As {@link #differsSignificantly(ReportNumber)}, with an additional contribution to the
   * difference.
   *
   * @param additional half the 95 % interval of effects that the numbers' own intervals leave out,
   *     such as the spread between runs; independent of them
   */
  public boolean differsSignificantly(ReportNumber other, double additional) {
    return minus(other, additional)
        .filter(o -> !o.estimateIfMeasured().orElseThrow().bounds().contains(0))
        .isPresent();
  }

  /**
   * Returns this number minus another of the same unit; empty if either was withheld. On each side,
   * the interval is the root of the sum of squares of the two facing half-intervals if both are
   * coverage intervals, and their sum if either is a bound.
   *
   * @param additional half the 95 % interval of effects that the numbers' own intervals leave out,
   *     such as the spread between runs; independent of them
   * @see <a href="https://doi.org/10.59161/JCGM100-2008E">JCGM 100:2008, 5.1.2, for independent
   *     quantities</a>
   */
  public Optional<Outcome> minus(ReportNumber other, double additional) {
    Optional<Estimate> mine = estimate();
    Optional<Estimate> theirs = other.estimate();
    if (mine.isEmpty() || theirs.isEmpty()) {
      return Optional.empty();
    }
    Estimate a = mine.get();
    Estimate b = theirs.get();
    double value = a.value() - b.value();
    double low =
        reach(a.value() - a.bounds().low(), b.bounds().high() - b.value(), other, additional);
    double high =
        reach(a.bounds().high() - a.value(), b.value() - b.bounds().low(), other, additional);
    Estimate difference = new Estimate(value, new Interval(value - low, value + high));
    return Optional.of(new Outcome.Measured(difference, Math.min(coverage(), other.coverage())));
  }

  private double reach(double mine, double theirs, ReportNumber other, double additional) {
    boolean covered = coverage() < 1 && other.coverage() < 1;
    return Math.hypot(covered ? Math.hypot(mine, theirs) : mine + theirs, additional);
  }

  /** Returns the coverage of the interval; 1 for bounds and withheld numbers. */
  public double coverage() {
    return outcome.fold(Outcome.Measured::coverage, w -> 1.0);
  }
}
