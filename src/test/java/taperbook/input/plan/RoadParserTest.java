package taperbook.input.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.diagnostics.Checked;
import taperbook.input.Given;
import taperbook.input.folder.ReportFileParser;
import taperbook.plan.ReportPlan;
import taperbook.plan.RoadTopic;
import taperbook.plan.RoadWishes;
import taperbook.plan.Trip;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.session.InputFile;

final class RoadParserTest {
  private static Checked<ReportPlan> check(String frontMatter) {
    String text = "---\ntitle: T\nsession: one\n" + frontMatter + "---\nBody\n";
    return ReportPlanParser.check(
        "look",
        ReportFileParser.read(
                new InputFile("reports/look.md", text.getBytes(StandardCharsets.UTF_8)))
            .value()
            .orElseThrow(),
        Set.of("one"),
        Set.of(),
        Set.of("report"),
        name -> false);
  }

  private static RoadWishes road(String frontMatter) {
    return Given.good(check(frontMatter)).wishes().road();
  }

  @Test
  void every_topic_and_a_whole_trip_are_accepted() {
    RoadWishes road =
        road(
            """
            road: trip, Plug-in, next leg, per minute, cost, standard range
            trip: 800 km, station every 30 mi, 6 min per stop, start at 95 %, reserve 12 %
            """);
    assertThat(road.topics()).containsExactly(RoadTopic.values());
    assertThat(road.trip())
        .contains(
            new Trip(
                new WantedDistance(800, Unit.KILOMETRE),
                new WantedDistance(30, Unit.MILE),
                360,
                95,
                12));
  }

  @Test
  void a_trip_may_state_the_speed_of_all_cars() {
    assertThat(trip("at 110 km/h").kilometresPerHour()).hasValue(110);
    assertThat(trip("drive at 130 km/h").kilometresPerHour()).hasValue(130);
    // 70 times 1.609344, exact.
    assertThat(trip("at 70 mph").kilometresPerHour().orElseThrow())
        .isCloseTo(112.65408, within(1e-9));
    assertThat(trip("start at 90 %").kilometresPerHour()).isEmpty();
    assertThat(problems("800 km, station every 50 km, at 400 km/h"))
        .singleElement()
        .asString()
        .contains("a speed from 30 to 250 km/h, as in at 110 km/h");
  }

  private static Trip trip(String part) {
    return road("road: trip\ntrip: 800 km, station every 50 km, " + part + "\n")
        .trip()
        .orElseThrow();
  }

  @Test
  void missing_parts_of_a_trip_have_defaults() {
    assertThat(road("road: trip\ntrip: 500 mi, stations every 40 mi\n").trip())
        .contains(
            new Trip(
                new WantedDistance(500, Unit.MILE),
                new WantedDistance(40, Unit.MILE),
                300,
                100,
                10,
                OptionalDouble.empty(),
                Trip.Overhead.USUAL));
  }

  @Test
  void no_road_topic_is_included_unless_requested() {
    assertThat(road("")).isEqualTo(new RoadWishes(Set.of(), Optional.empty()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "road: plugin|4:7: found \"plugin\"; expected any of plug-in, next leg, per minute, trip,"
            + " cost, standard range. To fix: write \"plug-in\". [value-not-understood]",
        "road: trip|4:7: found no key trip; expected the trip to plan, as road asks for"
            + " it. To fix: write \"trip: 800 km, station every 50 km, 6 min per stop\"."
            + " [key-missing]",
        "trip: 800 km, station every 50 km|4:7: found a trip that road does not ask for; expected the"
            + " topic trip under road. To fix: write \"road: trip\", or remove the trip."
            + " [facts-contradict]"
      })
  void invalid_topics_are_reported(String line, String sentence) {
    assertThat(Given.sentences(check(line + "\n"))).containsExactly("reports/look.md:" + sentence);
  }

  private static List<String> problems(String trip) {
    return Given.sentences(check("road: trip\ntrip: " + trip + "\n"));
  }

  @Test
  void all_problems_of_a_trip_are_reported_together() {
    assertThat(
            problems(
                "800 furlong, station every 50 km, 6 minutes per stop, reserve 10 %, reserve 5"))
        .hasSize(3)
        .anyMatch(p -> p.startsWith("reports/look.md:5:7: ") && p.contains("800 furlong"))
        .anyMatch(p -> p.contains("\"6 minutes per stop\"") && p.contains("6 min per stop"))
        .anyMatch(p -> p.contains("each part of a trip once, as in reserve 10 %"));
  }

  @Test
  void a_trip_without_stations_or_distance_is_reported() {
    assertThat(problems("6 min per stop"))
        .hasSize(2)
        .anyMatch(p -> p.contains("a trip without its distance"))
        .anyMatch(p -> p.contains("a trip without its stations"));
  }

  @Test
  void impossible_amounts_are_reported() {
    assertThat(problems("9000 km, station every 1 km"))
        .singleElement()
        .asString()
        .contains("at most 200 stations on the way; these are 8999");
    assertThat(problems("800 km, station every 50 km, start at 20 %, reserve 30 %"))
        .singleElement()
        .asString()
        .contains("a reserve below the state of charge at the start, 20 %");
    assertThat(problems("800 km, station every 50 km, start at 120 %"))
        .singleElement()
        .asString()
        .contains("a number from 1 to 100, as in start at 100 %");
  }
}
