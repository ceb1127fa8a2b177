package taperbook.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import taperbook.prosecheck.ArticleFigures;
import taperbook.prosecheck.TypedFigure;
import taperbook.prosecheck.TypedFigure.Verdict;

/**
 * Reports the result of checking a report's typed figures in one line, and in detail on request.
 */
final class FigureLines {
  private final String report;
  private final boolean detailed;

  /**
   * Creates the lines for one report.
   *
   * @param report its name
   * @param detailed true to list each figure with its place
   */
  FigureLines(String report, boolean detailed) {
    this.report = report;
    this.detailed = detailed;
  }

  /** Returns the lines; none for an article without figures. */
  List<String> of(ArticleFigures figures) {
    List<String> lines = new ArrayList<>();
    int all = figures.figures().size();
    if (all == 0) {
      return lines;
    }
    List<String> counts = new ArrayList<>();
    for (Verdict verdict : Verdict.values()) {
      long count = figures.count(verdict);
      if (count > 0) {
        counts.add(count + " " + words(verdict));
      }
    }
    lines.add(
        report
            + ": "
            + all
            + (all == 1 ? " figure" : " figures")
            + " typed by hand: "
            + String.join(", ", counts));
    if (detailed) {
      figures.figures().forEach(f -> lines.add(line(f)));
    }
    if (figures.count(Verdict.NOT_TRACEABLE) > 0) {
      lines.add(
          "  Not checked is no error: the text leaves open which number such a figure means."
              + " Compare it yourself"
              + (detailed ? "." : "; taperbook check " + report + " lists it with its place."));
    }
    return lines;
  }

  private static String line(TypedFigure figure) {
    return "  "
        + figure.place()
        + "  "
        + figure.written()
        + "  "
        + words(figure.verdict())
        + figure.id().map(id -> ": " + id).orElse("");
  }

  private static String words(Verdict verdict) {
    return switch (verdict) {
      case DELIBERATE -> "contradicted and marked as deliberate";
      case NOT_TRACEABLE -> "not checked";
      case SUPPORTED, CONTRADICTED -> verdict.name().toLowerCase(Locale.ROOT);
    };
  }
}
