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
    LibraryFigureText words = new LibraryFigureText(result);
    List<Figure> figures = new ArrayList<>();
    LibraryPlan plan = words.plan();
    new SortedTimes(words, plan.firstTimeToAddId())
        .figure(
            "library-time-to-add",
            "finding.least_time",
            words.distance(),
            Labels.of("chart.times_to_add", words.distance(), plan.style().basis().words()))
        .ifPresent(figures::add);
    new SortedTimes(words, plan.windowTimeId())
        .figure(
            "library-window-time",
            "finding.least_window_time",
            words.window(),
            Labels.of("chart.window_times", words.window()))
        .ifPresent(figures::add);
    figures.addAll(new LibraryCurves(words).figures());
    return figures;
  }
}
