package taperbook.input.facts;

import java.util.List;
import java.util.Optional;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.input.cell.NormalizedName;
import taperbook.input.cell.Suggestion;
import taperbook.session.DisplayRounding;
import taperbook.session.HowKnown;
import taperbook.session.ItemKind;

/** Parses how a fact is known, and checks that it does not contradict the value. */
final class HowKnownParser {
  private static final List<String> WORDS =
      HowKnown.written().stream().map(HowKnown::words).toList();
  private static final String NOTED = HowKnown.NOTED.words();
  private static final List<String> NOTHING =
      List.of(HowKnown.UNKNOWN.words(), DisplayRounding.NOT_KNOWN.words());

  private final ProblemLog log;

  HowKnownParser(ProblemLog log) {
    this.log = log;
  }

  /** Returns true if there is no value: empty, {@code unknown} or {@code not known}. */
  static boolean isEmptyOrUnknown(String value) {
    return value.isEmpty() || NOTHING.contains(NormalizedName.of(value));
  }

  /**
   * Parses how the fact is known. An empty cell counts as not stated for dates, texts, words and
   * prices, and as unknown with the value {@code unknown}. It is required for amounts, which must
   * not be noted.
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
          expected(row),
          Suggestion.of(row.howKnown(), WORDS)
              .map(w -> "write " + w)
              .orElse("write one of these words"));
    } else if (valueUnknown != (how.get() == HowKnown.UNKNOWN)) {
      reportContradiction(row);
      return Optional.empty();
    } else if (how.get() == HowKnown.NOTED && isAmount(row)) {
      reportNoted(row);
      return Optional.empty();
    }
    return how;
  }

  private void reportNoted(FactRow row) {
    row.problemOfHowKnown(
        log,
        ProblemCode.HOW_KNOWN_NOT_UNDERSTOOD,
        Quoted.of(row.howKnown()) + ", which is for words and dates",
        expected(row),
        "write where the amount came from");
  }

  private static boolean isAmount(FactRow row) {
    ItemKind.Form form = row.item().kind().form();
    return form == ItemKind.Form.AMOUNT
        || (form == ItemKind.Form.AMOUNT_OR_WORD && !isWord(row))
        || form == ItemKind.Form.CORRECTION;
  }

  private Optional<HowKnown> ifEmpty(FactRow row) {
    if (!isAmount(row)) {
      return Optional.of(HowKnown.NOT_STATED);
    }
    row.problemOfHowKnown(
        log,
        ProblemCode.HOW_KNOWN_NOT_UNDERSTOOD,
        "an empty cell",
        expected(row),
        "write how the value is known");
    return Optional.empty();
  }

  private static boolean isWord(FactRow row) {
    return row.item().kind().words().contains(NormalizedName.of(row.value()));
  }

  private void reportContradiction(FactRow row) {
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

  private static String expected(FactRow row) {
    List<String> words = WORDS.stream().filter(w -> !NOTED.equals(w) || !isAmount(row)).toList();
    return "one of " + String.join(", ", words);
  }
}
