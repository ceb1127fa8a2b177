package taperbook.output.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import taperbook.format.Labels;
import taperbook.format.NumberFormatter;
import taperbook.plan.RoadTopic;
import taperbook.plan.RoadWishes;
import taperbook.quantity.WantedDistance;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.Role;
import taperbook.result.SessionResult;

/** The chapter on road metrics, as far as the report requests them. */
final class RoadPart {
  private final ReportResult result;
  private final SessionResult main;
  private final NumberFormatter formatter;
  private final NumberViews views;
  private final NumberTable table;
  private final RoadWishes road;

  RoadPart(ReportResult result, NumberViews views, NumberFormatter formatter) {
    this.result = result;
    this.main = result.main();
    this.formatter = formatter;
    this.views = views;
    this.table = new NumberTable(views, formatter);
    this.road = result.plan().wishes().road();
  }

  Map<String, Object> map() {
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("present", !road.topics().isEmpty());
    map.put("plugIn", plugIn());
    map.put("warm", warm());
    map.put("warmNote", warmNote());
    map.put("climb", single("warm_up_time_lost"));
    map.put("nextLegs", road.wants(RoadTopic.NEXT_LEG) ? nextLegs() : List.of());
    map.put("reserve", road.reserveSoc() + "\u00a0%");
    map.put(
        "perMinute",
        road.wants(RoadTopic.PER_MINUTE) ? views.views(main, Role.PER_MINUTE) : List.of());
    map.put("trip", new TripPart(result, views, formatter).map());
    map.put("costs", SideBySide.table(result, table, road.wants(RoadTopic.COST), Role.COST));
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

  private Map<String, Object> plugIn() {
    return minutes(RoadWishes::plugInId);
  }

  /** Returns the rows without the warm-up climb, if they have a number. */
  private Map<String, Object> warm() {
    return minutes(RoadWishes::warmPlugInId);
  }

  private Map<String, Object> minutes(BiFunction<Integer, WantedDistance, String> id) {
    List<NumberTable.Row> rows =
        RoadWishes.PLUG_IN_SOC.stream()
            .map(
                from ->
                    new NumberTable.Row(
                        from + "\u00a0%",
                        plugInDistances().stream()
                            .map(d -> main.numbers().find(id.apply(from, d)))
                            .toList()))
            .filter(
                r ->
                    r.numbers().stream()
                        .anyMatch(n -> n.flatMap(ReportNumber::estimate).isPresent()))
            .toList();
    boolean wanted = road.wants(RoadTopic.PLUG_IN);
    return table.byColumn(
        Labels.of("mark.plug_in_at"),
        plugInDistances().stream().map(RoadPart::words).toList(),
        wanted ? rows : List.of());
  }

  /** Describes the basis of the warm rows, or why there are none. */
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

  /** Returns measured and corrected values side by side. */
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
