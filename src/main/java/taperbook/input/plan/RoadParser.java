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
      log.add(
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          written.line(),
          written.column(),
          Quoted.of(written.text()),
          "any of " + String.join(", ", TOPICS),
          Suggestion.of(written.text(), TOPICS)
              .map(t -> "write " + Quoted.of(t))
              .orElse("write those that are wanted, parted by commas"));
    }
    return topic;
  }

  private void reportMissingTrip(List<FrontMatterValue> written) {
    List<FrontMatterValue> asking = new ArrayList<>(written);
    asking.removeIf(t -> !NormalizedName.of(t.text()).equals(RoadTopic.TRIP.words()));
    FrontMatterValue first = asking.get(0);
    log.add(
        ProblemCode.KEY_MISSING,
        first.line(),
        first.column(),
        "no key " + ReportKey.TRIP.words(),
        ReportKey.TRIP.meaning() + ", as " + ReportKey.ROAD.words() + " asks for it",
        "write " + Quoted.of(ReportKey.TRIP.words() + ": " + ReportKey.TRIP.example()));
  }

  private void reportUnrequestedTrip(FrontMatterValue first) {
    log.add(
        ProblemCode.FACTS_CONTRADICT,
        first.line(),
        first.column(),
        "a trip that " + ReportKey.ROAD.words() + " does not ask for",
        "the topic trip under " + ReportKey.ROAD.words(),
        "write " + Quoted.of("road: trip") + ", or take the trip away");
  }
}
