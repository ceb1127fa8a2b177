package taperbook.output.view;

import java.util.Locale;
import java.util.Map;
import taperbook.result.Method;
import taperbook.result.ReportNumber;

/** Formats headline numbers. */
final class HeadlineFormat {
  private HeadlineFormat() {}

  /** Returns a headline number; the label of an average states what it is an average over. */
  static Map<String, Object> cell(NumberViews views, ReportNumber number) {
    Map<String, Object> view = views.view(number);
    boolean named = number.label().toLowerCase(Locale.ROOT).contains("over time");
    if (number.method() == Method.TIME_AVERAGE && !named) {
      view.put("label", number.label() + ", over time");
    }
    return view;
  }
}
