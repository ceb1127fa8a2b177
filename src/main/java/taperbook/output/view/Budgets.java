package taperbook.output.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import taperbook.result.Contribution;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;

/** The uncertainty budgets of the headline numbers, and how to reduce them. */
final class Budgets {
  private static final int MOST_SOURCES = 3;

  private Budgets() {}

  /** Returns one entry per number that has a budget: its largest sources and the best advice. */
  static List<Map<String, Object>> of(List<ReportNumber> numbers) {
    List<Map<String, Object>> budgets = new ArrayList<>();
    for (ReportNumber number : numbers) {
      List<Contribution> largest =
          number.outcome().fold(Outcome.Measured::budget, w -> List.<Contribution>of()).stream()
              .filter(c -> c.share() > 0)
              .limit(MOST_SOURCES)
              .toList();
      if (!largest.isEmpty()) {
        budgets.add(
            Map.of(
                "label", number.label(),
                "sources", largest.stream().map(Budgets::source).toList(),
                "advice", largest.get(0).source().advice()));
      }
    }
    return budgets;
  }

  private static Map<String, Object> source(Contribution contribution) {
    return Map.of(
        "words",
        contribution.source().words(),
        "share",
        contribution.share() < 0.005 ? "under 1\u00a0%" : NumberViews.share(contribution.share()));
  }
}
