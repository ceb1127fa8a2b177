package taperbook.metric.recording;

import java.util.List;
import java.util.Optional;
import taperbook.plan.Basis;
import taperbook.quantity.Estimate;
import taperbook.result.Method;
import taperbook.result.Outcome;
import taperbook.session.RowRef;

/**
 * An intermediate result of a metric: value or reason, with its rows.
 *
 * @param outcome value or reason
 * @param rows rows that it is computed from
 * @param basis basis of the value
 * @param method how it was determined
 */
public record Derived(Outcome outcome, List<RowRef> rows, Basis basis, Method method) {
  static Derived measured(Estimate estimate, List<RowRef> rows, Basis basis, Method method) {
    return new Derived(new Outcome.Measured(estimate, 1), rows, basis, method);
  }

  static Derived withheld(String reason, Basis basis, Method method) {
    return new Derived(new Outcome.Withheld(reason), List.of(), basis, method);
  }

  public Optional<Estimate> estimate() {
    return outcome.estimateIfMeasured();
  }

  public Optional<String> withheld() {
    return outcome.reasonIfWithheld();
  }
}
