package taperbook.measure.compare;

import java.util.ArrayList;
import java.util.List;
import taperbook.model.Basis;
import taperbook.model.Caveat;
import taperbook.model.Estimate;
import taperbook.model.Method;
import taperbook.model.Numbers;
import taperbook.model.Origin;
import taperbook.model.Outcome;
import taperbook.model.ReportNumber;
import taperbook.model.RowRef;
import taperbook.model.Unit;

/** Collects the numbers of a pair of sessions. */
final class PairLedger {
  private final String session;
  private final String against;
  private final List<Caveat> caveats;
  private final List<ReportNumber> numbers = new ArrayList<>();

  /** What is said of a number before it is measured. */
  record Heading(String id, String label, Unit unit, Method method) {}

  /**
   * An empty ledger.
   *
   * @param session name of the reported session
   * @param against name of the other
   * @param caveats what concerns the charging of either
   */
  PairLedger(String session, String against, List<Caveat> caveats) {
    this.session = session;
    this.against = against;
    this.caveats = List.copyOf(caveats);
  }

  void measured(Heading heading, Estimate estimate, double coverage, List<RowRef> rows) {
    add(heading, new Outcome.Measured(estimate, coverage), rows, caveats);
  }

  void withheld(Heading heading, String reason) {
    add(heading, new Outcome.Withheld(reason), List.of(), List.of());
  }

  private void add(Heading heading, Outcome outcome, List<RowRef> rows, List<Caveat> concerned) {
    Origin origin = new Origin(session, against, Basis.READINGS, rows);
    numbers.add(
        new ReportNumber(
            heading.id(),
            heading.label(),
            heading.unit(),
            outcome,
            origin,
            concerned,
            heading.method()));
  }

  Numbers numbers() {
    return new Numbers(numbers);
  }
}
