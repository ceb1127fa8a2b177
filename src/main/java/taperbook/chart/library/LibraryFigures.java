package taperbook.chart.library;

import java.util.ArrayList;
import java.util.List;
import taperbook.chart.render.Figure;
import taperbook.format.Labels;
import taperbook.plan.LibraryPlan;
import taperbook.result.LibraryResult;

/** Draws the figures of a library. */
public final class LibraryFigures {
  private LibraryFigures() {}

  /**
   * Returns the figures in display order: the sessions by the time to add the first distance and by
   * the time for the window, if two or more have it, and then all curves, twelve on each figure.
   * The same result gives the same figures, byte for byte.
   */
  public static List<Figure> draw(LibraryResult result) {
    LibraryFigureText texts = new LibraryFigureText(result);
    List<Figure> figures = new ArrayList<>();
    LibraryPlan plan = texts.plan();
    new SortedTimes(texts, plan.firstTimeToAddId())
        .figure(
            "library-time-to-add",
            "finding.least_time",
            texts.distance(),
            Labels.of("chart.times_to_add", texts.distance(), plan.style().basis().words()))
        .ifPresent(figures::add);
    new SortedTimes(texts, plan.windowTimeId())
        .figure(
            "library-window-time",
            "finding.least_window_time",
            texts.window(),
            Labels.of("chart.window_times", texts.window()))
        .ifPresent(figures::add);
    figures.addAll(new LibraryCurves(texts).figures());
    return figures;
  }
}
