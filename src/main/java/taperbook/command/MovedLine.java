package taperbook.command;

import java.util.List;
import taperbook.cli.Messages;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
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
          ? Texts.of("command.moved_line.no_number_moved_since_last")
          : Texts.of("command.moved_line.no_number_moved_since_last_version");
    }
    return Texts.of(
        "command.moved_line.of_moved_since_last_version",
        seen.size(),
        Messages.count(after.numbers().size(), "number"),
        shown(seen));
  }

  private String shown(List<MovedNumber> seen) {
    MovedNumber shown = seen.get(0);
    return Texts.of(
        "command.moved_line.from_to",
        shown.label(),
        wording.value(shown, shown.before()),
        wording.value(shown, shown.after()),
        seen.size() > 1 ? Texts.of("command.moved_line.and_others") : "");
  }
}
