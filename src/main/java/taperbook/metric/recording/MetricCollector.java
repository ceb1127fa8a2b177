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
 * Collects the numbers of one session, or of a comparison of two, and attaches the caveats that
 * concern their inputs. The only place where a {@link ReportNumber} is created.
 */
public final class MetricCollector {
  /** Bounds always contain the true value if the stated assumptions hold. */
  private static final double COVERAGE_OF_BOUNDS = 1;

  private final String session;
  private final String against;
  private final List<Caveat> caveats;
  private final Predicate<Metric> wanted;
  private final List<ReportNumber> numbers = new ArrayList<>();

  /** Creates a collector of all numbers. */
  public MetricCollector(String session, List<Caveat> caveats) {
    this(session, caveats, metric -> true);
  }

  /** Creates a collector that keeps only the wanted numbers. */
  public MetricCollector(String session, List<Caveat> caveats, Predicate<Metric> wanted) {
    this(session, "", caveats, wanted);
  }

  /** Creates a collector of numbers about two sessions. */
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

  /** Returns the caveats of one kind, for numbers that are affected only by their time span. */
  public List<Caveat> caveats(Caveat.Kind kind) {
    return caveats.stream().filter(c -> c.kind() == kind).toList();
  }

  /** Returns false if a number need not be computed. */
  public boolean wants(Metric metric) {
    return wanted.test(metric);
  }

  public void measured(Metric metric, Estimate estimate, List<RowRef> rows) {
    measured(metric, estimate, rows, List.of());
  }

  public void measured(Metric metric, Estimate estimate, List<RowRef> rows, List<Caveat> own) {
    covered(metric, estimate, COVERAGE_OF_BOUNDS, rows, own);
  }

  /** Adds a number whose interval has the given coverage. */
  public void covered(Metric metric, Estimate estimate, double coverage, List<RowRef> rows) {
    covered(metric, estimate, coverage, rows, List.of());
  }

  /** Adds as {@link #covered(Metric, Estimate, double, List)}, with additional caveats. */
  public void covered(
      Metric metric, Estimate estimate, double coverage, List<RowRef> rows, List<Caveat> own) {
    add(metric, new Outcome.Measured(estimate, coverage), rows, own);
  }

  public void withheld(Metric metric, String reason) {
    add(metric, new Outcome.Withheld(reason), List.of());
  }

  /** Adds a number measured from the courses, or the reason why it is withheld. */
  public void add(Metric metric, Outcome outcome, List<RowRef> rows) {
    add(metric, outcome, rows, List.of());
  }

  /** Adds as {@link #add(Metric, Outcome, List)}, with additional caveats. */
  public void add(Metric metric, Outcome outcome, List<RowRef> rows, List<Caveat> own) {
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
