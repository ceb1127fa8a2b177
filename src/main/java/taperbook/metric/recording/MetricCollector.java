package taperbook.metric.recording;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import taperbook.i18n.Message;
import taperbook.quantity.Estimate;
import taperbook.result.Metric;
import taperbook.result.Numbers;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.session.Caveat;
import taperbook.session.Origin;

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

  /** Adds a number with bounds, or the reason why it is withheld. */
  public void measured(Metric metric, Finding<Estimate> estimate) {
    measured(metric, estimate, List.of());
  }

  /** Adds as {@link #measured(Metric, Finding)}, with additional caveats. */
  public void measured(Metric metric, Finding<Estimate> estimate, List<Caveat> own) {
    covered(metric, estimate, COVERAGE_OF_BOUNDS, own);
  }

  /** Adds a number whose interval has the given coverage. */
  public void covered(Metric metric, Finding<Estimate> estimate, double coverage) {
    covered(metric, estimate, coverage, List.of());
  }

  /** Adds as {@link #covered(Metric, Finding, double)}, with additional caveats. */
  public void covered(
      Metric metric, Finding<Estimate> estimate, double coverage, List<Caveat> own) {
    add(metric, estimate.<Outcome>map(e -> new Outcome.Measured(e, coverage)), own);
  }

  public void withheld(Metric metric, Message reason) {
    add(metric, Finding.missing(reason));
  }

  /** Adds a number measured from the courses, or the reason why it is withheld. */
  public void add(Metric metric, Finding<Outcome> outcome) {
    add(metric, outcome, List.of());
  }

  /** Adds as {@link #add(Metric, Finding)}, with additional caveats. */
  public void add(Metric metric, Finding<Outcome> found, List<Caveat> own) {
    if (!wants(metric)) {
      return;
    }
    Outcome outcome =
        found.value().orElseGet(() -> new Outcome.Withheld(found.reason().orElseThrow()));
    boolean measured = outcome.reasonIfWithheld().isEmpty();
    List<Caveat> all = new ArrayList<>(measured ? own : List.of());
    if (measured) {
      caveats.stream().filter(metric::isConcernedBy).forEach(all::add);
    }
    Origin origin = new Origin(session, against, measured ? found.rows() : List.of());
    numbers.add(new ReportNumber(metric, outcome, origin, all));
  }

  public Numbers numbers() {
    return new Numbers(numbers);
  }
}
