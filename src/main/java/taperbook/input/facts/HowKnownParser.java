package taperbook.input.facts;

import java.util.List;
import java.util.Optional;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Texts;
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
              .map(w -> Texts.of("input.common.write", w))
              .orElse(Texts.of("input.common.write_one_of_these_words")));
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
        Texts.of("input.how_known_parser.which_is_for_words_and", Quoted.of(row.howKnown())),
        expected(row),
        Texts.of("input.how_known_parser.write_where_amount_came_from"));
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
        Texts.of("input.common.empty_cell"),
        expected(row),
        Texts.of("input.how_known_parser.write_how_value_is_known"));
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
        Texts.of(
            "input.common.with",
            row.value().isEmpty()
                ? Texts.of("input.how_known_parser.no_value")
                : Quoted.of(row.value()),
            Quoted.of(row.howKnown())),
        Texts.of("input.how_known_parser.value_with_word_how_it"),
        valueUnknown
            ? Texts.of("input.how_known_parser.write_value_or_unknown")
            : Texts.of("input.how_known_parser.take_value_away_or_write"));
  }

  private static String expected(FactRow row) {
    List<String> words = WORDS.stream().filter(w -> !NOTED.equals(w) || !isAmount(row)).toList();
    return Texts.of("input.how_known_parser.one_of", String.join(", ", words));
  }
}
