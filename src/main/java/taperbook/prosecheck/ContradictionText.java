package taperbook.prosecheck;

import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.diagnostics.SourceLocation;
import taperbook.format.NumberFormatter;
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
    String way = gap > 0 ? " more than" : " less than";
    log.add(
        ProblemCode.FIGURE_CONTRADICTED,
        place.line(),
        place.column(),
        Quoted.of(around(sentence, amount))
            + ", "
            + plain(wording.value(by, target.unit()))
            + way
            + " the result",
        target.label()
            + ": "
            + plain(wording.value(target.estimate(), target.unit()))
            + ", "
            + plain(wording.spread(target.estimate(), target.unit())),
        (target.isNumber()
                ? "write ${number(\"" + target.id() + "\")}, or correct the figure"
                : "correct the figure, or the item " + target.id() + " of the input")
            + ", or end the line with <!-- deliberate --> if it is meant to differ");
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
