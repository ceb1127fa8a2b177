package taperbook.check.facts;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import taperbook.check.spelling.Label;
import taperbook.check.spelling.Suggestion;
import taperbook.model.DisplayRounding;
import taperbook.model.HowKnown;
import taperbook.model.ItemKind;
import taperbook.problem.ProblemCode;
import taperbook.problem.ProblemLog;
import taperbook.problem.Quoted;

/** Reads how a fact is known, and checks that it does not contradict the value. */
final class HowKnownReader {
  private static final List<String> WORDS =
      Arrays.stream(HowKnown.values()).map(HowKnown::words).toList();
  private static final List<String> NOTHING =
      List.of(HowKnown.UNKNOWN.words(), DisplayRounding.NOT_KNOWN.words());

  private final ProblemLog log;

  HowKnownReader(ProblemLog log) {
    this.log = log;
  }

  /** True if a value states nothing: empty, {@code unknown} or {@code not known}. */
  static boolean isEmptyOrUnknown(String value) {
    return value.isEmpty() || NOTHING.contains(Label.of(value));
  }

  /**
   * How the fact is known. An empty cell counts as measured for dates, texts, words and prices,
   * which the tester has seen or not, and as unknown beside the value {@code unknown}.
   */
  Optional<HowKnown> read(FactRow row) {
    boolean valueUnknown = isEmptyOrUnknown(row.value());
    if (row.howKnown().isEmpty()) {
      return valueUnknown ? Optional.of(HowKnown.UNKNOWN) : ifEmpty(row);
    }
    Optional<HowKnown> how = HowKnown.ofWords(row.howKnown());
    if (how.isEmpty()) {
      row.problemOfHowKnown(
          log,
          ProblemCode.HOW_KNOWN_NOT_UNDERSTOOD,
          Quoted.of(row.howKnown()),
          expected(),
          Suggestion.of(row.howKnown(), WORDS)
              .map(w -> "write " + w)
              .orElse("write one of these words"));
    } else if (valueUnknown != (how.get() == HowKnown.UNKNOWN)) {
      tellContradiction(row);
      return Optional.empty();
    }
    return how;
  }

  private Optional<HowKnown> ifEmpty(FactRow row) {
    ItemKind.Form form = row.item().kind().form();
    boolean amount =
        form == ItemKind.Form.AMOUNT
            || (form == ItemKind.Form.AMOUNT_OR_WORD && !isWord(row))
            || form == ItemKind.Form.CORRECTION;
    if (!amount) {
      return Optional.of(HowKnown.MEASURED);
    }
    row.problemOfHowKnown(
        log,
        ProblemCode.HOW_KNOWN_NOT_UNDERSTOOD,
        "an empty cell",
        expected(),
        "write how the value is known");
    return Optional.empty();
  }

  private static boolean isWord(FactRow row) {
    return row.item().kind().words().contains(Label.of(row.value()));
  }

  private void tellContradiction(FactRow row) {
    boolean valueUnknown = isEmptyOrUnknown(row.value());
    row.problemOfHowKnown(
        log,
        ProblemCode.KNOWN_CONTRADICTION,
        (row.value().isEmpty() ? "no value" : Quoted.of(row.value()))
            + " with "
            + Quoted.of(row.howKnown()),
        "a value with a word how it is known, or an empty value with unknown,",
        valueUnknown
            ? "write the value, or unknown"
            : "take the value away, or write how it is known");
  }

  private static String expected() {
    return "one of " + String.join(", ", WORDS);
  }
}
