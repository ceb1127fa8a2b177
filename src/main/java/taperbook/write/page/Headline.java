package taperbook.write.page;

import java.util.Locale;
import java.util.Map;
import taperbook.model.Method;
import taperbook.model.ReportNumber;

/** How numbers at the top of a report are shown. */
final class Headline {
  private Headline() {}

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
