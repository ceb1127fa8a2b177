package taperbook.input.plan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Texts;
import taperbook.input.cell.NormalizedName;
import taperbook.input.cell.Suggestion;
import taperbook.input.folder.FrontMatterValue;
import taperbook.plan.RoadTopic;
import taperbook.plan.RoadWishes;
import taperbook.plan.Trip;
import taperbook.quantity.WantedDistance;

/** Parses the requested topics of road travel, and the trip if one is to be planned. */
final class RoadParser {
  private static final List<String> TOPICS =
      List.of(RoadTopic.values()).stream().map(RoadTopic::words).toList();

  private final FrontMatter frontMatter;
  private final ProblemLog log;
  private final Function<FrontMatterValue, Optional<WantedDistance>> distances;

  /**
   * Creates a parser.
   *
   * @param distances parses a distance, or reports its problem
   */
  RoadParser(
      FrontMatter frontMatter,
      ProblemLog log,
      Function<FrontMatterValue, Optional<WantedDistance>> distances) {
    this.frontMatter = frontMatter;
    this.log = log;
    this.distances = distances;
  }

  /** Returns the requests; no topics if there are none. */
  RoadWishes read() {
    List<FrontMatterValue> written = frontMatter.list(ReportKey.ROAD);
    List<FrontMatterValue> trip = frontMatter.list(ReportKey.TRIP);
    Set<RoadTopic> topics = EnumSet.noneOf(RoadTopic.class);
    written.forEach(text -> topic(text).ifPresent(topics::add));
    Optional<Trip> planned = new TripParser(log, distances).read(trip);
    boolean wanted = topics.contains(RoadTopic.TRIP);
    if (wanted && trip.isEmpty()) {
      reportMissingTrip(written);
    } else if (!wanted && !trip.isEmpty()) {
      reportUnrequestedTrip(trip.get(0));
    }
    if (!wanted || planned.isEmpty()) {
      topics.remove(RoadTopic.TRIP);
      return new RoadWishes(topics, Optional.empty());
    }
    return new RoadWishes(topics, planned);
  }

  private Optional<RoadTopic> topic(FrontMatterValue written) {
    Optional<RoadTopic> topic = RoadTopic.ofWords(NormalizedName.of(written.text()));
    if (topic.isEmpty()) {
      written.refuse(
          log,
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          Texts.of("input.road_parser.any_of", String.join(", ", TOPICS)),
          Suggestion.remedy(
              written.text(), TOPICS, Texts.of("input.road_parser.write_those_that_are_wanted")));
    }
    return topic;
  }

  private void reportMissingTrip(List<FrontMatterValue> written) {
    List<FrontMatterValue> asking = new ArrayList<>(written);
    asking.removeIf(t -> !NormalizedName.of(t.text()).equals(RoadTopic.TRIP.words()));
    FrontMatterValue first = asking.get(0);
    first.report(
        log,
        ProblemCode.KEY_MISSING,
        Texts.of("input.common.no_key", ReportKey.TRIP.words()),
        Texts.of(
            "input.road_parser.as_asks_for_it", ReportKey.TRIP.meaning(), ReportKey.ROAD.words()),
        Texts.of(
            "input.common.write",
            Quoted.of(ReportKey.TRIP.words() + ": " + ReportKey.TRIP.example())));
  }

  private void reportUnrequestedTrip(FrontMatterValue first) {
    first.report(
        log,
        ProblemCode.FACTS_CONTRADICT,
        Texts.of("input.road_parser.trip_that_does_not_ask", ReportKey.ROAD.words()),
        Texts.of("input.road_parser.topic_trip_under", ReportKey.ROAD.words()),
        Texts.of("input.road_parser.write_or_take_trip_away", Quoted.of("road: trip")));
  }
}
