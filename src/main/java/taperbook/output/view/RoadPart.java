package taperbook.output.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import taperbook.i18n.Texts;
import taperbook.output.view.NumberTable.RowView;
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
  private final NumberViews views;
  private final RoadWishes road;

  RoadPart(NumberViews views) {
    this.result = views.result();
    this.main = result.main();
    this.views = views;
    this.road = result.plan().wishes().road();
  }

  /** The chapter, as described at the top of {@code road.ftlh}. */
  record Road(
      boolean present,
      NumberTable<RowView> plugIn,
      NumberTable<RowView> warm,
      String warmNote,
      List<NumberView> climb,
      List<NextLeg> nextLegs,
      String reserve,
      List<NumberView> perMinute,
      TripPart.TripView trip,
      NumberTable<RowView> costs,
      List<Corrected> standard,
      List<NumberView> corrections,
      List<NumberView> twoWay) {}

  /** Where to unplug before a leg: best, and within a minute of it. */
  record NextLeg(
      String distance, NumberView soc, NumberView from, NumberView to, NumberView time) {}

  /** A measured value, and the same under standard conditions. */
  record Corrected(String label, NumberView measured, NumberView corrected) {}

  Road view() {
    boolean standard = road.wants(RoadTopic.STANDARD_RANGE);
    return new Road(
        !road.topics().isEmpty(),
        minutes(RoadWishes::plugInId),
        minutes(RoadWishes::warmPlugInId),
        warmNote(),
        main.numbers().measured("warm_up_time_lost").stream().map(views::view).toList(),
        road.wants(RoadTopic.NEXT_LEG) ? nextLegs() : List.of(),
        road.reserveSoc() + "\u00a0%",
        road.wants(RoadTopic.PER_MINUTE) ? views.views(main, Role.PER_MINUTE) : List.of(),
        new TripPart(views).view(),
        views.bySession(road.wants(RoadTopic.COST), Role.COST),
        standard ? standard() : List.of(),
        standard ? views.measured(main, Role.CORRECTION) : List.of(),
        standard ? views.measured(main, Role.TWO_WAY) : List.of());
  }

  private List<WantedDistance> plugInDistances() {
    return RoadWishes.plugInDistances(result.plan().style().units());
  }

  private static String words(WantedDistance distance) {
    return distance.words().replace(' ', '\u00a0');
  }

  /** Returns the times by starting charge and distance, as far as there are any. */
  private NumberTable<RowView> minutes(BiFunction<Integer, WantedDistance, String> id) {
    List<NumberTable.Row> rows =
        RoadWishes.PLUG_IN_SOC.stream()
            .map(
                from ->
                    new NumberTable.Row(
                        from + "\u00a0%",
                        plugInDistances().stream()
                            .map(d -> main.numbers().find(id.apply(from, d)))
                            .toList()))
            .filter(NumberTable.Row::hasEstimate)
            .toList();
    boolean wanted = road.wants(RoadTopic.PLUG_IN);
    return views.byColumn(
        Texts.of("mark.plug_in_at"),
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

  private List<NextLeg> nextLegs() {
    List<NextLeg> rows = new ArrayList<>();
    for (WantedDistance leg : result.plan().wishes().distances()) {
      String soc = "best_unplug_soc_" + leg.idPart();
      rows.add(
          new NextLeg(
              words(leg),
              views.view(main, soc),
              views.view(main, soc + "_from"),
              views.view(main, soc + "_to"),
              views.view(main, "best_unplug_time_" + leg.idPart())));
    }
    return rows;
  }

  /** Returns measured and corrected values side by side. */
  private List<Corrected> standard() {
    return List.of(
        pair(Texts.of("head.full_range"), "driven_range_full", "standard_range"),
        pair(Texts.of("head.consumption"), "consumption", "standard_consumption"));
  }

  private Corrected pair(String label, String measured, String corrected) {
    return new Corrected(label, views.view(main, measured), views.view(main, corrected));
  }
}
