package taperbook.measure.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import taperbook.model.Caveat;
import taperbook.model.Estimate;
import taperbook.model.Numbers;
import taperbook.model.Origin;
import taperbook.model.Outcome;
import taperbook.model.ReportNumber;
import taperbook.model.RowRef;

/**
 * Collects the numbers of one session and gives each the caveats that concern it. The one place
 * where a {@link ReportNumber} is made.
 */
public final class Ledger {
  /** The intervals are bounds: they hold the truth whenever the stated assumptions do. */
  private static final double COVERAGE_OF_BOUNDS = 1;

  private final String session;
  private final List<Caveat> caveats;
  private final Predicate<String> wanted;
  private final List<ReportNumber> numbers = new ArrayList<>();

  /** A ledger of all numbers. */
  public Ledger(String session, List<Caveat> caveats) {
    this(session, caveats, id -> true);
  }

  /** A ledger that keeps the numbers whose ids are wanted. */
  public Ledger(String session, List<Caveat> caveats, Predicate<String> wanted) {
    this.session = session;
    this.caveats = List.copyOf(caveats);
    this.wanted = wanted;
  }

  /** The caveats of one kind, for numbers that only their span tells to be concerned. */
  public List<Caveat> caveats(Caveat.Kind kind) {
    return caveats.stream().filter(c -> c.kind() == kind).toList();
  }

  /** False if a number need not be worked out. */
  public boolean wants(Entry entry) {
    return wanted.test(entry.id());
  }

  public void measured(Entry entry, Estimate estimate, List<RowRef> rows) {
    measured(entry, estimate, rows, List.of());
  }

  public void measured(Entry entry, Estimate estimate, List<RowRef> rows, List<Caveat> own) {
    List<Caveat> all = new ArrayList<>(own);
    caveats.stream().filter(entry::isConcernedBy).forEach(all::add);
    add(entry, new Outcome.Measured(estimate, COVERAGE_OF_BOUNDS), rows, all);
  }

  /** A number whose interval is meant to hold the truth in a share of cases. */
  public void covered(Entry entry, Estimate estimate, double coverage, List<RowRef> rows) {
    List<Caveat> all = caveats.stream().filter(entry::isConcernedBy).toList();
    add(entry, new Outcome.Measured(estimate, coverage), rows, all);
  }

  /** A number as it came of the courses, measured or not. */
  public void enter(Entry entry, Outcome outcome, List<RowRef> rows) {
    enter(entry, outcome, rows, List.of());
  }

  /** As {@link #enter(Entry, Outcome, List)}, with caveats of the number's own. */
  public void enter(Entry entry, Outcome outcome, List<RowRef> rows, List<Caveat> own) {
    if (outcome.reasonIfWithheld().isPresent()) {
      withheld(entry, outcome.reasonIfWithheld().get());
      return;
    }
    List<Caveat> all = new ArrayList<>(own);
    caveats.stream().filter(entry::isConcernedBy).forEach(all::add);
    add(entry, outcome, rows, all);
  }

  public void withheld(Entry entry, String reason) {
    add(entry, new Outcome.Withheld(reason), List.of(), List.of());
  }

  /** As {@link #covered(Entry, Estimate, double, List)}, with caveats of the number's own. */
  public void covered(
      Entry entry, Estimate estimate, double coverage, List<RowRef> rows, List<Caveat> own) {
    List<Caveat> all = new ArrayList<>(own);
    caveats.stream().filter(entry::isConcernedBy).forEach(all::add);
    add(entry, new Outcome.Measured(estimate, coverage), rows, all);
  }

  private void add(Entry entry, Outcome outcome, List<RowRef> rows, List<Caveat> concerned) {
    if (!wants(entry)) {
      return;
    }
    numbers.add(
        new ReportNumber(
            entry.id(),
            entry.label(),
            entry.unit(),
            outcome,
            new Origin(session, entry.basis(), rows),
            concerned,
            entry.method()));
  }

  public Numbers numbers() {
    return new Numbers(numbers);
  }
}
