package taperbook.write.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import taperbook.model.Basis;
import taperbook.model.Method;
import taperbook.model.ReportNumber;
import taperbook.model.ReportPlan;
import taperbook.model.WantedDistance;

/** Which numbers stand at the top of a report. */
final class Headline {
  private static final int MOST_DISTANCES = 3;

  private Headline() {}

  /** Ids of the numbers at the top, at most seven: first what minutes buy, then the rest. */
  static List<String> ids(ReportPlan plan) {
    List<String> ids = new ArrayList<>();
    plan.wishes().distances().stream().limit(MOST_DISTANCES).forEach(d -> ids.add(added(plan, d)));
    String window = plan.wishes().windows().get(0).idPart();
    ids.addAll(
        List.of("peak_power", "peak_hold_time", "time_soc_" + window, "average_power_" + window));
    return ids;
  }

  /** The id of the time to add a distance on the basis that the tester chose. */
  static String added(ReportPlan plan, WantedDistance distance) {
    String id = "time_to_add_" + distance.idPart();
    return plan.style().basis() == Basis.RATED ? id + "_rated" : id;
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
