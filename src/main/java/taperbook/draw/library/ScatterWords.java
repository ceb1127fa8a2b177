package taperbook.draw.library;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import taperbook.model.LibraryResult;
import taperbook.model.LibraryRow;

/** Tells a scatter plot in words: axes, and each session unless there are too many. */
final class ScatterWords {
  private ScatterWords() {}

  static String told(
      String x, String y, List<LibraryRow> rows, Function<LibraryRow, String> row, String caption) {
    String axes =
        "Scatter plot of "
            + LibraryWords.sessions(rows.size())
            + ". Horizontal axis: "
            + x
            + ". Vertical axis: "
            + y
            + ". ";
    String each =
        rows.size() <= ScatterPainter.MOST_LABELLED
            ? rows.stream().map(row).collect(Collectors.joining("; ")) + ". "
            : "Each session's numbers stand in "
                + (rows.size() > LibraryResult.MOST_SHOWN ? "numbers.csv. " : "the table. ");
    return axes + each + caption;
  }
}
