package taperbook.app.command;

import java.util.List;
import java.util.Optional;
import taperbook.app.process.Messages;
import taperbook.model.Estimate;
import taperbook.model.MovedNumber;
import taperbook.proof.Moves;
import taperbook.proof.NumbersFile;
import taperbook.words.Wording;

/** A line that tells which numbers a mended reading moved. */
final class MovedLine {
  /** The beginnings of the ids that matter most; one of them is told before any other. */
  private static final List<String> FIRST = List.of("time_to_add_", "peak_", "time_soc_");

  private final Wording wording;

  MovedLine(Wording wording) {
    this.wording = wording;
  }

  /** The line for two versions of a report. */
  String of(NumbersFile before, NumbersFile after) {
    List<MovedNumber> moved = Moves.between(before, after);
    if (moved.isEmpty()) {
      return "  no number moved since the last version";
    }
    String counts =
        "  "
            + moved.size()
            + " of "
            + Messages.count(after.numbers().size(), "number")
            + " moved since the last version";
    List<MovedNumber> seen = moved.stream().filter(this::isSeen).toList();
    return seen.isEmpty() ? counts + ", none in the digits that are printed" : counts + told(seen);
  }

  /** True if it is printed otherwise than before. */
  private boolean isSeen(MovedNumber number) {
    return !words(number.before(), number).equals(words(number.after(), number));
  }

  private String told(List<MovedNumber> seen) {
    MovedNumber told =
        FIRST.stream()
            .flatMap(id -> seen.stream().filter(m -> m.id().startsWith(id)))
            .findFirst()
            .orElse(seen.get(0));
    return ": "
        + told.label()
        + " from "
        + words(told.before(), told)
        + " to "
        + words(told.after(), told)
        + (seen.size() > 1 ? ", and others" : "");
  }

  private String words(Optional<Estimate> estimate, MovedNumber number) {
    return estimate.map(e -> wording.value(e, number.unit())).orElse("withheld");
  }
}
