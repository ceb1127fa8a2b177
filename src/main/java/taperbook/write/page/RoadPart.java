package taperbook.write.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import taperbook.model.ReportNumber;
import taperbook.model.ReportResult;
import taperbook.model.RoadTopic;
import taperbook.model.RoadWishes;
import taperbook.model.Role;
import taperbook.model.SessionResult;
import taperbook.model.WantedDistance;
import taperbook.words.Labels;
import taperbook.words.SessionNames;

/** The chapter on the road: only what the report asks for. */
final class RoadPart {
  private final ReportResult result;
  private final SessionResult main;
  private final NumberViews views;
  private final RoadWishes road;

  RoadPart(ReportResult result, NumberViews views) {
    this.result = result;
    this.main = result.main();
    this.views = views;
    this.road = result.plan().wishes().road();
  }

  Map<String, Object> map() {
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("present", !road.topics().isEmpty());
    map.put(
        "sessions",
        SessionNames.heads(result.sessions().stream().map(SessionResult::session).toList()));
    map.put("plugIn", road.wants(RoadTopic.PLUG_IN) ? plugIn() : List.of());
    map.put("plugInDistances", plugInDistances().stream().map(RoadPart::words).toList());
    map.put("warm", road.wants(RoadTopic.PLUG_IN) ? warm() : List.of());
    map.put("warmNote", warmNote());
    map.put("climb", single("warm_up_time_lost"));
    map.put("nextLegs", road.wants(RoadTopic.NEXT_LEG) ? nextLegs() : List.of());
    map.put("reserve", road.reserveSoc() + "\u00a0%");
    map.put(
        "perMinute",
        road.wants(RoadTopic.PER_MINUTE) ? views.views(main, Role.PER_MINUTE) : List.of());
    map.put("trip", new TripPart(result, views).map());
    map.put(
        "costs",
        road.wants(RoadTopic.COST) ? SideBySide.rows(result, views, Role.COST) : List.of());
    map.put("standard", road.wants(RoadTopic.STANDARD_RANGE) ? standard() : List.of());
    map.put(
        "corrections",
        road.wants(RoadTopic.STANDARD_RANGE) ? views.measured(main, Role.CORRECTION) : List.of());
    map.put(
        "twoWay",
        road.wants(RoadTopic.STANDARD_RANGE) ? views.measured(main, Role.TWO_WAY) : List.of());
    return map;
  }

  private List<WantedDistance> plugInDistances() {
    return RoadWishes.plugInDistances(result.plan().style().units());
  }

  private static String words(WantedDistance distance) {
    return distance.words().replace(' ', '\u00a0');
  }

  private List<Map<String, Object>> plugIn() {
    return RoadWishes.PLUG_IN_SOC.stream()
        .map(
            from ->
                row(
                    from,
                    plugInDistances().stream().map(d -> RoadWishes.plugInId(from, d)).toList()))
        .toList();
  }

  /** Rows from which the climb was taken out; only those that have a number. */
  private List<Map<String, Object>> warm() {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (int from : RoadWishes.PLUG_IN_SOC) {
      List<String> ids =
          plugInDistances().stream().map(d -> RoadWishes.warmPlugInId(from, d)).toList();
      if (ids.stream().anyMatch(id -> main.numbers().estimate(id).isPresent())) {
        rows.add(row(from, ids));
      }
    }
    return rows;
  }

  private Map<String, Object> row(int from, List<String> ids) {
    return Map.of(
        "from", from + "\u00a0%", "cells", ids.stream().map(id -> views.view(main, id)).toList());
  }

  /** What the warm rows rest on, or why there are none. */
  private String warmNote() {
    Optional<ReportNumber> climb = main.numbers().find("warm_up_time_lost");
    if (climb.isPresent() && climb.get().estimate().isPresent()) {
      return climb.get().caveats().get(0).sentence();
    }
    return climb
        .or(() -> main.numbers().find("warm_up_end_soc"))
        .flatMap(ReportNumber::withheld)
        .orElse("");
  }

  private List<Map<String, Object>> single(String id) {
    return main.numbers().estimate(id).isPresent() ? List.of(views.view(main, id)) : List.of();
  }

  private List<Map<String, Object>> nextLegs() {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (WantedDistance leg : result.plan().wishes().distances()) {
      String soc = "best_unplug_soc_" + leg.idPart();
      rows.add(
          Map.of(
              "distance", words(leg),
              "soc", views.view(main, soc),
              "from", views.view(main, soc + "_from"),
              "to", views.view(main, soc + "_to"),
              "time", views.view(main, "best_unplug_time_" + leg.idPart())));
    }
    return rows;
  }

  /** Measured beside corrected. */
  private List<Map<String, Object>> standard() {
    return List.of(
        pair(Labels.of("head.full_range"), "driven_range_full", "standard_range"),
        pair(Labels.of("head.consumption"), "consumption", "standard_consumption"));
  }

  private Map<String, Object> pair(String label, String measured, String corrected) {
    return Map.of(
        "label", label,
        "measured", views.view(main, measured),
        "corrected", views.view(main, corrected));
  }
}
