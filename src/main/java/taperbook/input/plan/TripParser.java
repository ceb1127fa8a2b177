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
          "a reserve below the state of charge at the start, " + start + " %",
          "write a smaller reserve or a higher start");
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
              "each part of a trip once, as in " + part.example,
              "take one of the two away");
        }
        return;
      }
    }
    List<String> examples = List.of(Part.values()).stream().map(p -> p.example).toList();
    refuse(
        written,
        ProblemCode.VALUE_NOT_UNDERSTOOD,
        "parts such as " + String.join(", ", examples),
        Suggestion.of(written.text(), examples)
            .map(e -> "write it as " + Quoted.of(e))
            .orElse("write it in one of these forms"));
  }

  private Optional<Given> given(Part part) {
    return Optional.ofNullable(parts.get(part));
  }

  private void require(Part part, FrontMatterValue first) {
    if (given(part).isEmpty()) {
      log.add(
          ProblemCode.KEY_MISSING,
          first.line(),
          first.column(),
          "a trip without " + (part == Part.DISTANCE ? "its distance" : "its stations"),
          "a part such as " + part.example,
          "write " + Quoted.of(ReportKey.TRIP.words() + ": " + ReportKey.TRIP.example()));
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
          "a number from " + low + " to " + high + ", as in " + part.example,
          "correct the number");
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
          "a speed from " + MIN_SPEED + " to " + MAX_SPEED + " km/h, as in " + Part.SPEED.example,
          "correct the speed");
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
          "at most " + Trip.MAX_STATIONS + " stations on the way; these are " + stations,
          "write a wider spacing");
    }
  }

  private void refuse(FrontMatterValue written, ProblemCode code, String expected, String remedy) {
    sound = false;
    log.add(code, written.line(), written.column(), Quoted.of(written.text()), expected, remedy);
  }
}
