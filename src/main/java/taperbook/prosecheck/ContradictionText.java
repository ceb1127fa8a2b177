package taperbook.prosecheck;

import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.diagnostics.SourceLocation;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;

/** Describes a contradiction: the typed figure, the measured value and their difference. */
final class ContradictionText {
  private static final int WORDS_AROUND = 24;

  private final NumberFormatter wording;

  ContradictionText(Unit distanceUnit) {
    this.wording = new NumberFormatter(distanceUnit);
  }

  void report(
      ProblemLog log, SourceLocation place, Sentence sentence, Amount amount, Target target) {
    double gap = amount.base() - target.estimate().value();
    Estimate by = Estimate.around(Math.abs(gap), target.estimate().bounds().width() / 2);
    String way =
        gap > 0
            ? Texts.of("prose.contradiction_text.more_than")
            : Texts.of("prose.contradiction_text.less_than");
    log.add(
        ProblemCode.FIGURE_CONTRADICTED,
        place.line(),
        place.column(),
        Texts.of(
            "prose.contradiction_text.result",
            Quoted.of(around(sentence, amount)),
            plain(wording.value(by, target.unit())),
            way),
        target.label()
            + ": "
            + plain(wording.value(target.estimate(), target.unit()))
            + ", "
            + plain(wording.spread(target.estimate(), target.unit())),
        Texts.of(
            "prose.contradiction_text.or_end_line_with_deliberate",
            target.isNumber()
                ? Texts.of("prose.contradiction_text.write_number_or_correct_figure", target.id())
                : Texts.of("prose.contradiction_text.correct_figure_or_item_of", target.id())));
  }

  /** Returns the figure with the surrounding words, so that it is easy to find. */
  private static String around(Sentence sentence, Amount amount) {
    String text = sentence.text();
    int from = Math.max(0, amount.start() - WORDS_AROUND);
    from = from == 0 ? 0 : text.indexOf(' ', from) + 1;
    int start = Math.min(from, amount.start());
    int to = Math.min(text.length(), amount.end() + WORDS_AROUND / 2);
    int end = to == text.length() ? to : Math.max(amount.end(), text.lastIndexOf(' ', to));
    return text.substring(start, end)
        .replace(Passage.CALL, '\u2026')
        .replaceAll(" +:", ":")
        .replaceAll("[\\s:]+$", "")
        .strip();
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }
}
