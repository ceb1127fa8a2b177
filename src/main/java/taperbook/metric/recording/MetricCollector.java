package taperbook.metric.recording;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import taperbook.quantity.Estimate;
import taperbook.result.Metric;
import taperbook.result.Numbers;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.session.Caveat;
import taperbook.session.Origin;
import taperbook.session.RowRef;

/**
 * Collects the numbers of one session, or of one held against another, and gives each the caveats
 * that concern its inputs. The one place where a {@link ReportNumber} is made.
 */
public final class MetricCollector {
  /** The intervals are bounds: they hold the truth whenever the stated assumptions do. */
  private static final double COVERAGE_OF_BOUNDS = 1;

  private final String session;
  private final String against;
  private final List<Caveat> caveats;
  private final Predicate<Metric> wanted;
  private final List<ReportNumber> numbers = new ArrayList<>();

  /** A ledger of all numbers. */
  public MetricCollector(String session, List<Caveat> caveats) {
    this(session, caveats, metric -> true);
  }

  /** A ledger that keeps the numbers that are wanted. */
  public MetricCollector(String session, List<Caveat> caveats, Predicate<Metric> wanted) {
    this(session, "", caveats, wanted);
  }

  /** A ledger of numbers about a session and another. */
  public MetricCollector(String session, String against, List<Caveat> caveats) {
    this(session, against, caveats, metric -> true);
  }

  private MetricCollector(
      String session, String against, List<Caveat> caveats, Predicate<Metric> wanted) {
    this.session = session;
    this.against = against;
    this.caveats = List.copyOf(caveats);
    this.wanted = wanted;
  }

  /** The caveats of one kind, for numbers that only their span tells to be concerned. */
  public List<Caveat> caveats(Caveat.Kind kind) {
    return caveats.stream().filter(c -> c.kind() == kind).toList();
  }

  /** False if a number need not be worked out. */
  public boolean wants(Metric metric) {
    return wanted.test(metric);
  }

  public void measured(Metric metric, Estimate estimate, List<RowRef> rows) {
    measured(metric, estimate, rows, List.of());
  }

  public void measured(Metric metric, Estimate estimate, List<RowRef> rows, List<Caveat> own) {
    covered(metric, estimate, COVERAGE_OF_BOUNDS, rows, own);
  }

  /** A number whose interval is meant to hold the truth in a share of cases. */
  public void covered(Metric metric, Estimate estimate, double coverage, List<RowRef> rows) {
    covered(metric, estimate, coverage, rows, List.of());
  }

  /** As {@link #covered(Metric, Estimate, double, List)}, with caveats of the number's own. */
  public void covered(
      Metric metric, Estimate estimate, double coverage, List<RowRef> rows, List<Caveat> own) {
    enter(metric, new Outcome.Measured(estimate, coverage), rows, own);
  }

  public void withheld(Metric metric, String reason) {
    enter(metric, new Outcome.Withheld(reason), List.of());
  }

  /** A number as it came of the courses, measured or not. */
  public void enter(Metric metric, Outcome outcome, List<RowRef> rows) {
    enter(metric, outcome, rows, List.of());
  }

  /** As {@link #enter(Metric, Outcome, List)}, with caveats of the number's own. */
  public void enter(Metric metric, Outcome outcome, List<RowRef> rows, List<Caveat> own) {
    if (!wants(metric)) {
      return;
    }
    boolean measured = outcome.reasonIfWithheld().isEmpty();
    List<Caveat> all = new ArrayList<>(measured ? own : List.of());
    if (measured) {
      caveats.stream().filter(metric::isConcernedBy).forEach(all::add);
    }
    Origin origin = new Origin(session, against, measured ? rows : List.of());
    numbers.add(new ReportNumber(metric, outcome, origin, all));
  }

  public Numbers numbers() {
    return new Numbers(numbers);
  }
}
