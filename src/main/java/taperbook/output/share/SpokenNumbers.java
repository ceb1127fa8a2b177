package taperbook.output.share;

import java.util.Optional;
import java.util.OptionalDouble;
import taperbook.format.NumberFormatter;
import taperbook.result.Curve;
import taperbook.result.Numbers;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;

/** Formats numbers for speech, with the times that they belong to. */
final class SpokenNumbers {
  private final Numbers numbers;
  private final Optional<Curve> socOverTime;
  private final NumberFormatter formatter;

  /** Creates spoken numbers of a report, with the curve of its session. */
  SpokenNumbers(ReportResult result, Numbers numbers) {
    this.numbers = numbers;
    this.socOverTime = result.main().curves().socOverTime();
    this.formatter = new NumberFormatter(result.plan().style());
  }

  /** Returns the value in the number's unit, if it was measured. */
  OptionalDouble amount(String id) {
    return numbers
        .estimate(id)
        .map(e -> OptionalDouble.of(e.value()))
        .orElse(OptionalDouble.empty());
  }

  /** Returns the value with its unit, if it was measured. */
  Optional<String> value(String id) {
    return measured(id).map(formatter::value);
  }

  /** Returns the value with its uncertainty, if it was measured. */
  Optional<String> full(String id) {
    return measured(id).map(formatter::outcome);
  }

  /** Returns the time since plugging in, s, at which the displayed charge first reaches a level. */
  OptionalDouble secondsAt(double percent) {
    if (socOverTime.isEmpty()) {
      return OptionalDouble.empty();
    }
    Curve curve = socOverTime.get();
    for (int i = 0; i < curve.size(); i++) {
      if (curve.y(i) >= percent) {
        return OptionalDouble.of(i == 0 ? curve.x(0) : between(curve, i, percent));
      }
    }
    return OptionalDouble.empty();
  }

  private static double between(Curve curve, int i, double percent) {
    double share = (percent - curve.y(i - 1)) / (curve.y(i) - curve.y(i - 1));
    return curve.x(i - 1) + share * (curve.x(i) - curve.x(i - 1));
  }

  private Optional<ReportNumber> measured(String id) {
    return numbers.find(id).filter(n -> n.estimate().isPresent());
  }
}
