package taperbook.command;

import java.util.ArrayList;
import java.util.List;
import taperbook.i18n.Texts;
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
        Texts.of(
            "command.figure_lines.typed_by_hand",
            report,
            all,
            all == 1
                ? Texts.of("command.figure_lines.figure")
                : Texts.of("command.figure_lines.figures"),
            String.join(", ", counts)));
    if (detailed) {
      figures.figures().forEach(f -> lines.add(line(f)));
    }
    if (figures.count(Verdict.NOT_TRACEABLE) > 0) {
      lines.add(
          Texts.of(
              "command.figure_lines.not_checked_is_no_error",
              detailed
                  ? "."
                  : Texts.of("command.figure_lines.taperbook_check_lists_it_with", report)));
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
      case DELIBERATE -> Texts.of("command.figure_lines.contradicted_and_marked_as_deliberate");
      case NOT_TRACEABLE -> Texts.of("command.figure_lines.not_checked");
      case SUPPORTED -> Texts.of("command.figure_lines.supported");
      case CONTRADICTED -> Texts.of("command.figure_lines.contradicted");
    };
  }
}
