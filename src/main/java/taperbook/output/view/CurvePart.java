package taperbook.output.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import taperbook.result.SessionResult;

/** Two tables: the numbers of the charging curve and of the battery's energy. */
final class CurvePart {
  private final SessionResult session;
  private final NumberViews views;

  CurvePart(SessionResult session, NumberViews views) {
    this.session = session;
    this.views = views;
  }

  /** Returns one row per segment of the curve and per step between segments. */
  List<Map<String, Object>> segments() {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (int k = 1; session.numbers().find(id(k, "soc_from")).isPresent(); k++) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("kind", kind(k));
      row.put("from", views.view(session, id(k, "soc_from")));
      row.put("to", views.view(session, id(k, "soc_to")));
      row.put("power", views.view(session, id(k, "power")));
      row.put("slope", views.view(session, id(k, "slope")));
      rows.add(row);
      String step = "taper_step_" + k;
      if (session.numbers().find(step + "_soc").isPresent()) {
        rows.add(
            Map.of(
                "step", views.view(session, step + "_soc"),
                "height", views.view(session, step + "_height")));
      }
    }
    return rows;
  }

  private static String id(int segment, String what) {
    return "taper_segment_" + segment + "_" + what;
  }

  /** Extracts the kind of a segment from its label: {@code Segment 2, plateau: from}. */
  private String kind(int segment) {
    String label = session.numbers().get(id(segment, "soc_from")).label();
    String kind = label.substring(label.indexOf(", ") + 2, label.lastIndexOf(':'));
    return Character.toUpperCase(kind.charAt(0)) + kind.substring(1);
  }
}
