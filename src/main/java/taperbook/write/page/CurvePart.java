package taperbook.write.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import taperbook.model.SessionResult;

/** The numbers of the charging curve and of the battery's energy, as two tables of the report. */
final class CurvePart {
  private static final List<String> CURVE =
      List.of(
          "peak_reached_time",
          "peak_reached_soc",
          "warm_up_end_soc",
          "soc_below_80_percent_of_peak",
          "soc_below_50_percent_of_peak",
          "steepest_taper_slope",
          "time_share_above_150_kw",
          "time_share_above_100_kw",
          "time_share_above_50_kw",
          "peak_to_average_ratio",
          "limit_current");

  private static final List<String> ENERGY =
      List.of(
          "energy_added",
          "energy_per_soc",
          "energy_per_soc_fitted",
          "implied_full_energy_fitted",
          "drive_energy_share",
          "charging_loss",
          "charging_efficiency");

  private final SessionResult session;
  private final NumberViews views;

  CurvePart(SessionResult session, NumberViews views) {
    this.session = session;
    this.views = views;
  }

  /** One row for each straight segment of the curve, and for each step between two of them. */
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

  /** Numbers of the curve that were measured. */
  List<Map<String, Object>> curve() {
    return measured(CURVE);
  }

  /** Numbers of the battery's energy that were measured, among them changes against others. */
  List<Map<String, Object>> energy() {
    List<String> ids = new ArrayList<>(ENERGY);
    session.numbers().all().stream()
        .map(n -> n.id())
        .filter(id -> id.startsWith("full_energy_change_") || id.equals("full_energy_slope"))
        .forEach(ids::add);
    return measured(ids);
  }

  /** Numbers of the later stops of a day. */
  List<Map<String, Object>> stops() {
    return session.numbers().all().stream()
        .filter(n -> n.id().startsWith("stop_"))
        .map(views::view)
        .toList();
  }

  private List<Map<String, Object>> measured(List<String> ids) {
    return ids.stream()
        .filter(id -> session.numbers().estimate(id).isPresent())
        .map(id -> views.view(session, id))
        .toList();
  }

  private static String id(int segment, String what) {
    return "taper_segment_" + segment + "_" + what;
  }

  /** The kind of a segment stands in its label: {@code Segment 2, plateau: from}. */
  private String kind(int segment) {
    String label = session.numbers().get(id(segment, "soc_from")).label();
    String kind = label.substring(label.indexOf(", ") + 2, label.lastIndexOf(':'));
    return Character.toUpperCase(kind.charAt(0)) + kind.substring(1);
  }
}
