package taperbook.command;

import java.util.List;
import taperbook.cli.Messages;
import taperbook.format.NumberFormatter;
import taperbook.result.MovedNumber;
import taperbook.verify.NumberMoves;
import taperbook.verify.NumbersFile;

/**
 * Summarizes in one line the numbers that a corrected reading moved, with the first of them by
 * name.
 */
final class MovedLine {
  private final NumberFormatter wording;

  MovedLine(NumberFormatter wording) {
    this.wording = wording;
  }

  /** Returns the line for two versions of a report. */
  String of(NumbersFile before, NumbersFile after) {
    List<MovedNumber> seen =
        NumberMoves.between(before, after).stream()
            .filter(m -> !wording.isPrintedAlike(m))
            .toList();
    if (seen.isEmpty()) {
      return NumberMoves.stated(before, after).isEmpty()
          ? "  no number moved since the last version"
          : "  no number moved since the last version by more than other random draws move it";
    }
    return "  "
        + seen.size()
        + " of "
        + Messages.count(after.numbers().size(), "number")
        + " moved since the last version"
        + shown(seen);
  }

  private String shown(List<MovedNumber> seen) {
    MovedNumber shown = seen.get(0);
    return ": "
        + shown.label()
        + " from "
        + wording.value(shown, shown.before())
        + " to "
        + wording.value(shown, shown.after())
        + (seen.size() > 1 ? ", and others" : "");
  }
}
