package taperbook.write.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import taperbook.model.Method;
import taperbook.model.ReportNumber;
import taperbook.model.ReportPlan;

/** Which numbers stand at the top of a report. */
final class Headline {
  private static final int MOST_DISTANCES = 3;

  private Headline() {}

  /** Ids of the numbers at the top, at most seven: first what minutes buy, then the rest. */
  static List<String> ids(ReportPlan plan) {
    List<String> ids = new ArrayList<>();
    plan.wishes().distances().stream()
        .limit(MOST_DISTANCES)
        .map(plan::timeToAddId)
        .forEach(ids::add);
    String window = plan.wishes().windows().get(0).idPart();
    ids.addAll(
        List.of("peak_power", "peak_hold_time", "time_soc_" + window, "average_power_" + window));
    return ids;
  }

  /** A number at the top: an average says by its name what it is an average over. */
  static Map<String, Object> cell(NumberViews views, ReportNumber number) {
    Map<String, Object> view = views.view(number);
    boolean named = number.label().toLowerCase(Locale.ROOT).contains("over time");
    if (number.method() == Method.TIME_AVERAGE && !named) {
      view.put("label", number.label() + ", over time");
    }
    return view;
  }
}
