package taperbook.input.plan;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Texts;
import taperbook.input.cell.NormalizedName;
import taperbook.input.cell.Suggestion;
import taperbook.input.folder.FrontMatterValue;
import taperbook.plan.Trip;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;

/** Parses the parts of a trip. */
final class TripParser {
  private static final int MAX_MINUTES = 600;

  /** Speed limits of a trip that is worth planning stops for, km/h. */
  private static final int MIN_SPEED = 30;

  private static final int MAX_SPEED = 250;

  /** The parts of a trip. */
  private enum Part {
    DISTANCE("([0-9]+ ?[a-z]*)", "800 km"),
    SPACING("stations? every (.+)", "station every 50 km"),
    STOP("([0-9]{1,3}) ?min per stop", "6 min per stop"),
    START("start (?:at|with) ([0-9]{1,3}) ?%?", "start at 100 %"),
    RESERVE("reserve ([0-9]{1,3}) ?%?", "reserve 10 %"),
    SPEED("(?:drive |driven )?at ([0-9]{1,3} ?(?:km/h|mi/h|mph))", "at 110 km/h");

    private final Pattern pattern;
    private final String example;

    Part(String pattern, String example) {
      this.pattern = Pattern.compile(pattern);
      this.example = example;
    }
  }

  /** The text of a part, and the amount in it. */
  private record Given(FrontMatterValue whole, FrontMatterValue amount) {}

  private final ProblemLog log;
  private final Function<FrontMatterValue, Optional<WantedDistance>> distances;
  private final Map<Part, Given> parts = new EnumMap<>(Part.class);
  private boolean sound = true;

  TripParser(ProblemLog log, Function<FrontMatterValue, Optional<WantedDistance>> distances) {
    this.log = log;
    this.distances = distances;
  }

  /** Returns the trip; empty if there is none, or if it has a problem. */
  Optional<Trip> read(List<FrontMatterValue> written) {
    if (written.isEmpty()) {
      return Optional.empty();
    }
    written.forEach(this::take);
    require(Part.DISTANCE, written.get(0));
    require(Part.SPACING, written.get(0));
    Optional<WantedDistance> distance =
        given(Part.DISTANCE).flatMap(g -> distances.apply(g.amount));
    Optional<WantedDistance> spacing = given(Part.SPACING).flatMap(g -> distances.apply(g.amount));
    int minutes = number(Part.STOP, 0, MAX_MINUTES).orElse(-1);
    int start = number(Part.START, 1, 100).orElse(Trip.DEFAULT_START_SOC);
    OptionalDouble speed = speed();
    int reserve = number(Part.RESERVE, 0, 99).orElse(Trip.DEFAULT_RESERVE_SOC);
    if (reserve >= start) {
      refuse(
          given(Part.RESERVE).or(() -> given(Part.START)).orElseThrow().whole,
          ProblemCode.FACTS_CONTRADICT,
          Texts.of("input.trip_parser.reserve_below_state_of_charge", start),
          Texts.of("input.trip_parser.write_smaller_reserve_or_higher"));
    }
    if (distance.isPresent() && spacing.isPresent()) {
      limit(distance.get(), spacing.get());
    }
    if (!sound || distance.isEmpty() || spacing.isEmpty()) {
      return Optional.empty();
    }
    double seconds = minutes < 0 ? Trip.DEFAULT_SECONDS_PER_STOP : minutes * 60.0;
    Trip.Overhead overhead = minutes < 0 ? Trip.Overhead.USUAL : Trip.Overhead.STATED;
    return Optional.of(
        new Trip(distance.get(), spacing.get(), seconds, start, reserve, speed, overhead));
  }

  private void take(FrontMatterValue written) {
    for (Part part : Part.values()) {
      Matcher match = part.pattern.matcher(NormalizedName.of(written.text()));
      if (match.matches()) {
        FrontMatterValue amount =
            new FrontMatterValue(match.group(1), written.line(), written.column() + match.start(1));
        if (parts.putIfAbsent(part, new Given(written, amount)) != null) {
          refuse(
              written,
              ProblemCode.FACTS_CONTRADICT,
              Texts.of("input.trip_parser.each_part_of_trip_once", part.example),
              Texts.of("input.common.take_one_of_two_away"));
        }
        return;
      }
    }
    List<String> examples = List.of(Part.values()).stream().map(p -> p.example).toList();
    refuse(
        written,
        ProblemCode.VALUE_NOT_UNDERSTOOD,
        Texts.of("input.trip_parser.parts_such_as", String.join(", ", examples)),
        Suggestion.of(written.text(), examples)
            .map(e -> Texts.of("input.trip_parser.write_it_as", Quoted.of(e)))
            .orElse(Texts.of("input.trip_parser.write_it_in_one_of")));
  }

  private Optional<Given> given(Part part) {
    return Optional.ofNullable(parts.get(part));
  }

  private void require(Part part, FrontMatterValue first) {
    if (given(part).isEmpty()) {
      first.report(
          log,
          ProblemCode.KEY_MISSING,
          Texts.of(
              "input.trip_parser.trip_without",
              part == Part.DISTANCE
                  ? Texts.of("input.trip_parser.its_distance")
                  : Texts.of("input.trip_parser.its_stations")),
          Texts.of("input.trip_parser.part_such_as", part.example),
          Texts.of(
              "input.common.write",
              Quoted.of(ReportKey.TRIP.words() + ": " + ReportKey.TRIP.example())));
    }
  }

  private OptionalInt number(Part part, int low, int high) {
    Optional<Given> given = given(part);
    if (given.isEmpty()) {
      return OptionalInt.empty();
    }
    int number = Integer.parseInt(given.get().amount.text());
    if (number < low || number > high) {
      refuse(
          given.get().whole,
          ProblemCode.VALUE_OUT_OF_RANGE,
          Texts.of("input.trip_parser.number_from_to_as_in", low, high, part.example),
          Texts.of("input.trip_parser.correct_number"));
      return OptionalInt.empty();
    }
    return OptionalInt.of(number);
  }

  /** Returns the speed of all cars, km/h. */
  private OptionalDouble speed() {
    Optional<Given> given = given(Part.SPEED);
    if (given.isEmpty()) {
      return OptionalDouble.empty();
    }
    String amount = given.get().amount.text();
    Unit unit = amount.endsWith("km/h") ? Unit.KILOMETRE_PER_HOUR : Unit.MILE_PER_HOUR;
    double speed = unit.toBase(Integer.parseInt(amount.replaceAll("[^0-9]", "")));
    if (speed < MIN_SPEED || speed > MAX_SPEED) {
      refuse(
          given.get().whole,
          ProblemCode.VALUE_OUT_OF_RANGE,
          Texts.of(
              "input.trip_parser.speed_from_to_km_h", MIN_SPEED, MAX_SPEED, Part.SPEED.example),
          Texts.of("input.trip_parser.correct_speed"));
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(speed);
  }

  private void limit(WantedDistance distance, WantedDistance spacing) {
    int stations = Trip.stations(distance, spacing);
    if (stations > Trip.MAX_STATIONS) {
      refuse(
          given(Part.SPACING).orElseThrow().whole,
          ProblemCode.VALUE_OUT_OF_RANGE,
          Texts.of("input.trip_parser.at_most_stations_on_way", Trip.MAX_STATIONS, stations),
          Texts.of("input.trip_parser.write_wider_spacing"));
    }
  }

  private void refuse(FrontMatterValue written, ProblemCode code, String expected, String remedy) {
    sound = false;
    written.refuse(log, code, expected, remedy);
  }
}
