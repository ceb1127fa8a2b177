package taperbook.draw;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import taperbook.model.Estimate;
import taperbook.model.Numbers;
import taperbook.model.ReportNumber;
import taperbook.model.ReportPlan;
import taperbook.model.ReportResult;
import taperbook.model.SocWindow;
import taperbook.model.Unit;
import taperbook.words.Wording;

/** A report's numbers as figures say them: each with its bounds, or with the reason for none. */
final class Said {
  private final ReportResult result;
  private final Numbers numbers;
  private final Wording wording;

  Said(ReportResult result) {
    this.result = result;
    this.numbers = result.main().numbers();
    this.wording = new Wording(result.plan().style().units());
  }

  ReportResult result() {
    return result;
  }

  Wording wording() {
    return wording;
  }

  ReportPlan.Wishes wishes() {
    return result.plan().wishes();
  }

  /** The window of the headline. */
  SocWindow window() {
    return wishes().windows().get(0);
  }

  /** The car, as a subtitle. */
  String vehicle() {
    return result.main().session().vehicle();
  }

  Optional<Estimate> estimate(String id) {
    return numbers.estimate(id);
  }

  /** The value with its unit, if there is one. */
  Optional<String> value(String id) {
    return measured(id).map(wording::value);
  }

  /** The bounds in brackets, if there is a value. */
  Optional<String> bounds(String id) {
    return measured(id).map(n -> "(" + wording.range(n) + ")");
  }

  /** The value with its bounds in brackets, if there is one. */
  Optional<String> full(String id) {
    return measured(id).map(n -> wording.value(n) + " (" + wording.range(n) + ")");
  }

  /** A sentence that begins as told and goes on with the value, or says why there is none. */
  Optional<String> sentence(String beginning, String subject, String id) {
    return full(id).map(value -> beginning + " " + value + ".").or(() -> withheld(subject, id));
  }

  /** A sentence that says why there is no value, if it was withheld. */
  Optional<String> withheld(String subject, String id) {
    return numbers
        .find(id)
        .flatMap(ReportNumber::withheld)
        .map(reason -> subject + " is withheld: " + reason + ".");
  }

  /** A time in seconds, in words. */
  String time(double seconds) {
    return wording.value(Estimate.exactly(Math.rint(seconds)), Unit.SECOND);
  }

  /** An amount to one decimal at most. */
  static String plain(double amount) {
    BigDecimal rounded = new BigDecimal(amount).setScale(1, RoundingMode.HALF_EVEN);
    return rounded.stripTrailingZeros().scale() <= 0
        ? rounded.setScale(0, RoundingMode.HALF_EVEN).toPlainString()
        : rounded.toPlainString();
  }

  /** Sentences that there are, in a row. */
  static String sentences(List<Optional<String>> parts) {
    return String.join(" ", parts.stream().flatMap(Optional::stream).toList());
  }

  private Optional<ReportNumber> measured(String id) {
    return numbers.find(id).filter(n -> n.estimate().isPresent());
  }
}
