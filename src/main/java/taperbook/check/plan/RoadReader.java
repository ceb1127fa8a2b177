package taperbook.check.plan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import taperbook.check.spelling.Label;
import taperbook.check.spelling.Suggestion;
import taperbook.model.RoadTopic;
import taperbook.model.RoadWishes;
import taperbook.model.Trip;
import taperbook.model.WantedDistance;
import taperbook.problem.ProblemCode;
import taperbook.problem.ProblemLog;
import taperbook.problem.Quoted;
import taperbook.read.RawText;

/** Reads what a report wants of the road: the topics, and the trip if one is to be planned. */
final class RoadReader {
  private static final List<String> TOPICS =
      List.of(RoadTopic.values()).stream().map(RoadTopic::words).toList();

  private final FrontMatter frontMatter;
  private final ProblemLog log;
  private final Function<RawText, Optional<WantedDistance>> distances;

  /**
   * A reader.
   *
   * @param distances reads a distance, or tells the problem of it
   */
  RoadReader(
      FrontMatter frontMatter,
      ProblemLog log,
      Function<RawText, Optional<WantedDistance>> distances) {
    this.frontMatter = frontMatter;
    this.log = log;
    this.distances = distances;
  }

  /** The wishes; nothing of the road if nothing is written. */
  RoadWishes read() {
    List<RawText> written = frontMatter.list(ReportKey.ROAD);
    List<RawText> trip = frontMatter.list(ReportKey.TRIP);
    Set<RoadTopic> topics = EnumSet.noneOf(RoadTopic.class);
    written.forEach(text -> topic(text).ifPresent(topics::add));
    Optional<Trip> planned = new TripReader(log, distances).read(trip);
    boolean wanted = topics.contains(RoadTopic.TRIP);
    if (wanted && trip.isEmpty()) {
      tellNoTrip(written);
    } else if (!wanted && !trip.isEmpty()) {
      tellUnasked(trip.get(0));
    }
    if (!wanted || planned.isEmpty()) {
      topics.remove(RoadTopic.TRIP);
      return new RoadWishes(topics, Optional.empty());
    }
    return new RoadWishes(topics, planned);
  }

  private Optional<RoadTopic> topic(RawText written) {
    Optional<RoadTopic> topic = RoadTopic.ofWords(Label.of(written.text()));
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

  private void tellNoTrip(List<RawText> written) {
    List<RawText> asking = new ArrayList<>(written);
    asking.removeIf(t -> !Label.of(t.text()).equals(RoadTopic.TRIP.words()));
    RawText first = asking.get(0);
    log.add(
        ProblemCode.KEY_MISSING,
        first.line(),
        first.column(),
        "no key " + ReportKey.TRIP.words(),
        ReportKey.TRIP.meaning() + ", as " + ReportKey.ROAD.words() + " asks for it",
        "write " + Quoted.of(ReportKey.TRIP.words() + ": " + ReportKey.TRIP.example()));
  }

  private void tellUnasked(RawText first) {
    log.add(
        ProblemCode.FACTS_CONTRADICT,
        first.line(),
        first.column(),
        "a trip that " + ReportKey.ROAD.words() + " does not ask for",
        "the topic trip under " + ReportKey.ROAD.words(),
        "write " + Quoted.of("road: trip") + ", or take the trip away");
  }
}
