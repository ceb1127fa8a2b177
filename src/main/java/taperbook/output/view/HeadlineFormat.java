package taperbook.output.view;

import java.util.Map;
import taperbook.i18n.Texts;
import taperbook.result.ReportNumber;

/** Formats headline numbers. */
final class HeadlineFormat {
  /** The average whose label does not state that it is one over time. */
  private static final String SESSION_AVERAGE = "average_power_session";

  private HeadlineFormat() {}

  /** Returns a headline number; the label of an average states what it is an average over. */
  static Map<String, Object> cell(NumberViews views, ReportNumber number) {
    Map<String, Object> view = views.view(number);
    if (number.id().equals(SESSION_AVERAGE)) {
      view.put("label", Texts.of("page.headline_format.over_time", number.label()));
    }
    return view;
  }
}
