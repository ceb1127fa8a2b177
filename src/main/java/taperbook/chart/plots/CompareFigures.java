package taperbook.chart.plots;

import java.util.ArrayList;
import java.util.List;
import taperbook.chart.render.Draft;
import taperbook.chart.render.Figure;
import taperbook.result.ReportResult;

/** Draws the figures of a report that compare sessions. */
public final class CompareFigures {
  private CompareFigures() {}

  /**
   * Returns the figures in display order: the runs of the reported session; power over state of
   * charge and over time, the differences, and power per kWh of the battery. Empty if nothing is
   * repeated or compared; omits figures whose curves are missing. The same result gives the same
   * figures, byte for byte.
   */
  public static List<Figure> draw(ReportResult result) {
    return drafts(result).stream().map(Figure::of).toList();
  }

  /** Returns the figures before painting. */
  public static List<Draft> drafts(ReportResult result) {
    List<Draft> drafts = new ArrayList<>();
    RunsOverSoc.draft(result).ifPresent(drafts::add);
    if (result.compared().isEmpty()) {
      return drafts;
    }
    Lineup lineup = Lineup.of(result);
    PowersOverSoc.draft(lineup).ifPresent(drafts::add);
    PowersOverTime.draft(lineup).ifPresent(drafts::add);
    for (int k = 0; k < lineup.pairs().size(); k++) {
      DifferenceOverSoc.draft(lineup, k).ifPresent(drafts::add);
    }
    ChargeRates.draft(lineup).ifPresent(drafts::add);
    return drafts;
  }
}
