package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.cli.ExitStatus;

/** Start files, from the command line to a check without problems. */
final class BlankTest {
  // The items of the file format, written by hand.
  private static final List<String> CONDITIONS =
      List.of(
          "date",
          "place",
          "vehicle",
          "model year",
          "odometer",
          "station rated power",
          "station shared",
          "vehicle rated peak power",
          "ambient temperature",
          "battery temperature at start",
          "preconditioned",
          "preconditioning time",
          "battery usable energy",
          "software version",
          "state of charge resolution",
          "power resolution",
          "energy resolution",
          "clock resolution",
          "price per kWh",
          "price per minute",
          "session fee",
          "currency",
          "read from",
          "display rounds",
          "rows written",
          "power measured at",
          "energy counted at",
          "heating included",
          "display lag",
          "arrived",
          "plugged in",
          "first power",
          "unplugged",
          "left",
          "remarks");
  private static final List<String> RANGE_TEST =
      List.of(
          "date",
          "vehicle",
          "distance",
          "distance source",
          "odometer correction",
          "start soc",
          "end soc",
          "energy used",
          "consumption displayed",
          "average speed",
          "target speed",
          "ambient temperature",
          "wind speed",
          "wind direction to route",
          "start elevation",
          "end elevation",
          "air pressure",
          "tyre pressure",
          "payload",
          "drag area",
          "rolling coefficient",
          "vehicle mass",
          "body",
          "climate control",
          "route",
          "rated range",
          "rated range basis",
          "remarks");

  /** A plausible value in each suggested unit: common practice, no source. */
  private static final Map<String, String> BY_UNIT =
      Map.of(
          "kWh/100 km", "18", "Wh/mi", "290", "hPa", "990", "bar", "2.5", "psi", "36", "min", "20");

  private static final Map<String, String> BY_ITEM =
      Map.ofEntries(
          Map.entry("date", "2026-03-14"),
          Map.entry("station shared", "no"),
          Map.entry("preconditioned", "yes"),
          Map.entry("currency", "EUR"),
          Map.entry("read from", "film"),
          Map.entry("display rounds", "down"),
          Map.entry("rows written", "at changes"),
          Map.entry("power measured at", "car"),
          Map.entry("energy counted at", "battery"),
          Map.entry("heating included", "no"),
          Map.entry("station rated power", "120"),
          Map.entry("arrived", "-4:00"),
          Map.entry("plugged in", "-1:00"),
          Map.entry("first power", "0:00"),
          Map.entry("unplugged", "60:00"),
          Map.entry("left", "61:00"),
          Map.entry("start soc", "90"),
          Map.entry("route", "loop"),
          Map.entry("rolling coefficient", "0.01"),
          Map.entry("vehicle mass", "1600"),
          Map.entry("body", "hatchback"));

  private static final Map<String, String> PRICES =
      Map.of("price per kWh", "EUR/kWh", "price per minute", "EUR/min", "session fee", "EUR");

  @TempDir private Path folder = Path.of("");

  private Workplace place() throws IOException {
    Files.createDirectories(folder.resolve("sessions"));
    Files.createDirectories(folder.resolve("reports"));
    return new Workplace(folder);
  }

  private static List<String> items(String csv) {
    return csv.lines().skip(1).map(row -> row.split(",", -1)[0]).toList();
  }

  /** The fact sheet with a value for every item, in the unit of the file. */
  private static String filled(String csv) {
    List<String> rows = new ArrayList<>(List.of(csv.lines().findFirst().orElseThrow()));
    for (String row : csv.lines().skip(1).toList()) {
      String[] cells = row.split(",", -1);
      String unit = PRICES.getOrDefault(cells[0], cells[2]);
      String usual = cells[2].isEmpty() && !PRICES.containsKey(cells[0]) ? "some text" : "5";
      String value = BY_ITEM.getOrDefault(cells[0], BY_UNIT.getOrDefault(unit, usual));
      rows.add(String.join(",", cells[0], value, unit, "displayed"));
    }
    return String.join("\n", rows) + "\n";
  }

  @ParameterizedTest
  @ValueSource(strings = {"km", "mi"})
  void the_files_of_a_session_have_every_item_and_pass_the_check_when_filled_in(String units)
      throws IOException {
    Workplace place = place();
    assertThat(place.run("blank", "session", "stop", "--units", units)).isEqualTo(ExitStatus.DONE);
    String conditions = place.text("sessions/stop/conditions.csv");
    assertThat(conditions).startsWith("item,value,unit,how known,give or take\n");
    assertThat(items(conditions)).isEqualTo(CONDITIONS);
    assertThat(conditions).contains("odometer,," + units + ",,\n");
    assertThat(conditions).contains("display rounds,,,unknown,\nrows written,,,unknown,\n");

    String readings = place.text("sessions/stop/readings.csv");
    assertThat(readings)
        .isEqualTo(
            "elapsed [min:s],soc [%],power [kW],energy added [kWh],battery temperature ["
                + (units.equals("mi") ? "degF" : "Cel")
                + "],note\n");
    Files.writeString(
        place.path("sessions/stop/readings.csv"), readings + "0:00,10,90,0,20,\n5:00,20,80,7,,\n");
    Files.writeString(place.path("sessions/stop/conditions.csv"), filled(conditions));
    assertThat(place.run("check")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(place.out()).endsWith("0 errors, 0 notices" + System.lineSeparator());
  }

  @ParameterizedTest
  @ValueSource(strings = {"km", "mi"})
  void the_files_of_a_range_test_have_every_item_and_pass_the_check_when_filled_in(String units)
      throws IOException {
    Workplace place = place();
    assertThat(place.run("blank", "range-test", "ring", "--legs", "--units=" + units))
        .isEqualTo(ExitStatus.DONE);
    String facts = place.text("sessions/ring/range-test.csv");
    assertThat(items(facts)).isEqualTo(RANGE_TEST);
    String legs = place.text("sessions/ring/legs.csv");
    Files.writeString(place.path("sessions/ring/range-test.csv"), filled(facts));
    Files.writeString(
        place.path("sessions/ring/legs.csv"), legs + "lap 1,50,30:00,9.1,90,70,rain\n");
    assertThat(place.run("check")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(place.out()).endsWith("0 errors, 0 notices" + System.lineSeparator());
  }

  @Test
  void the_check_of_new_files_names_each_required_item_and_no_optional_one() throws IOException {
    Workplace place = place();
    place.run("blank", "session", "stop");
    place.run("blank", "range-test", "ring");
    assertThat(place.run("check")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err().lines().filter(l -> l.contains("expected  a value for ")))
        .extracting(l -> l.replaceAll(".*a value for |, or the word.*", ""))
        .containsExactly(
            "date",
            "vehicle",
            "odometer",
            "station rated power",
            "ambient temperature",
            "battery temperature at start",
            "preconditioned",
            "read from",
            "date",
            "vehicle",
            "distance",
            "start soc",
            "end soc",
            "energy used",
            "average speed",
            "ambient temperature");
    assertThat(place.err()).containsOnlyOnce("column heads without a row below them");
    assertThat(place.out()).contains("17 errors, 0 notices");
  }

  @Test
  void every_item_and_column_is_explained_in_the_guide() throws IOException {
    Workplace place = place();
    place.run("blank", "session", "stop");
    place.run("blank", "range-test", "ring", "--legs");
    String session = place.text("sessions/stop/about-session.txt");
    CONDITIONS.forEach(
        item -> assertThat(session).containsPattern("\n  " + item + "( \\*)?\n    "));
    assertThat(session).contains("\n  elapsed\n    Time since plugging in").contains("soc [%]");
    assertThat(session.lines().mapToInt(String::length).max().orElseThrow()).isLessThan(89);
    String ring = place.text("sessions/ring/about-range-test.txt");
    RANGE_TEST.forEach(item -> assertThat(ring).containsPattern("\n  " + item + "( \\*)?\n    "));
    assertThat(ring).contains("Columns of legs.csv");
  }

  @Test
  void existing_files_are_never_overwritten() throws IOException {
    Workplace place = place();
    Path mine = place.path("sessions/stop/conditions.csv");
    Files.createDirectories(mine.resolveSibling(""));
    Files.writeString(mine, "mine");
    assertThat(place.run("blank", "session", "stop")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err())
        .isEqualTo(
            "taperbook: sessions/stop/conditions.csv is there already, and nothing is written over."
                + " Choose another name, or move it away."
                + System.lineSeparator());
    assertThat(place.files("sessions")).containsOnlyKeys("stop/conditions.csv");
    assertThat(Files.readString(mine, StandardCharsets.UTF_8)).isEqualTo("mine");
  }

  @ParameterizedTest
  @ValueSource(strings = {"../out", ".hidden", "a b", "", "caf\u00e9"})
  void an_invalid_name_is_refused_and_nothing_is_written(String name) throws IOException {
    Workplace place = place();
    assertThat(place.run("blank", "session", name)).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err()).contains("[name-not-allowed]").contains("the command line");
    assertThat(place.files(".")).isEmpty();
  }

  @Tag("slow")
  @Test
  void a_new_report_has_every_key_and_builds_when_it_has_a_title() throws IOException {
    Workplace place = Workplace.withDemo(folder);
    assertThat(place.run("blank", "report", "mine", "finch-quarry-lane", "finch-ring-road"))
        .isEqualTo(ExitStatus.DONE);
    assertThat(place.text("reports/mine.md"))
        .contains("\nsession: finch-quarry-lane\n", "\nrange test: finch-ring-road\n")
        .contains("\n#compare: ", "\n#distances: ", "\n#soc marks: ", "\n#window: ", "\n#basis: ")
        .contains("\n#author: ", "\n#published: ", "\n#template: ", "\nunits: km\n");
    assertThat(place.run("check", "mine")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err()).containsOnlyOnce("[key-missing]").contains("title without a value");

    place.replace("reports/mine.md", "\ntitle:\n", "\ntitle: Mine\n");
    assertThat(place.run("check", "mine")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(place.err()).isEmpty();
  }

  @Test
  void files_in_miles_have_matching_units() throws IOException {
    Workplace place = place();
    place.run("blank", "session", "stop", "--units", "mi");
    place.run("blank", "range-test", "ring", "--legs", "--units", "mi");
    assertThat(place.text("sessions/stop/conditions.csv"))
        .contains("\nambient temperature,,degF,", "\nbattery temperature at start,,degF,");
    assertThat(place.text("sessions/ring/range-test.csv"))
        .contains("\ndistance,,mi,", "\naverage speed,,mi/h,", "\nconsumption displayed,,Wh/mi,")
        .contains("\nambient temperature,,degF,", "\nstart elevation,,ft,", "\ntyre pressure,,psi,")
        .contains("\npayload,,lb,", "\nvehicle mass,,lb,");
    assertThat(place.text("sessions/ring/legs.csv")).contains("distance [mi]");
  }

  @ParameterizedTest
  @CsvSource({
    "veldt-quarry-lane, veldt-ring-road, '', mi",
    "veldt-quarry-lane, finch-ring-road, '', km",
    "veldt-quarry-lane, '', '', mi",
    "finch-quarry-lane, veldt-ring-road, '', mi",
    "veldt-quarry-lane, veldt-ring-road, km, km"
  })
  void a_report_has_the_requested_units_or_those_of_its_drive_or_session(
      String session, String drive, String requested, String units) throws IOException {
    Workplace place = Workplace.withDemo(folder);
    List<String> arguments = new ArrayList<>(List.of("blank", "report", "mine", session));
    if (!drive.isEmpty()) {
      arguments.add(drive);
    }
    if (!requested.isEmpty()) {
      arguments.addAll(List.of("--units", requested));
    }
    assertThat(place.run(arguments.toArray(String[]::new))).isEqualTo(ExitStatus.DONE);
    assertThat(place.text("reports/mine.md")).contains("\nunits: " + units + "\n");
  }

  @Test
  void a_report_has_the_units_of_an_incomplete_drive() throws IOException {
    Workplace place = place();
    place.run("blank", "session", "stop");
    place.run("blank", "range-test", "ring", "--units", "mi");
    place.run("blank", "report", "mine", "stop", "ring");
    assertThat(place.text("reports/mine.md")).contains("\nunits: mi\n").contains("Adding 100 mi");
  }

  @Test
  void a_report_of_an_unknown_session_is_refused_with_the_nearest_name() throws IOException {
    Workplace place = place();
    place.run("blank", "session", "stop");
    assertThat(place.run("blank", "report", "mine", "stpo")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err())
        .contains("there is no session called 'stpo'. Perhaps stop?")
        .contains("taperbook blank session NAME begins one.");
    assertThat(place.path("reports/mine.md")).doesNotExist();
  }

  @ParameterizedTest
  @CsvSource({
    "blank, blank needs to know what to begin",
    "blank session, usage: taperbook blank session NAME",
    "blank session a b, usage: taperbook blank session NAME",
    "blank drive a, usage: taperbook blank range-test NAME",
    "blank report a, usage: taperbook blank report NAME SESSION",
    "blank sheet drive, usage: taperbook blank sheet",
    "blank sheet --paper a5, '--paper needs one of the words a4, letter, not ''a5'''",
    "blank session a --units miles, '--units needs one of the words km, mi, not ''miles'''",
    "blank session a --units, there is no",
    "check --legs, check takes no option --legs",
    "blnk session a, there is no command 'blnk'; did you mean blank?",
    "report --page, there is no option --page"
  })
  void wrong_usage_writes_nothing_and_prints_the_usage(String arguments, String message)
      throws IOException {
    Workplace place = place();
    boolean valueMissing = arguments.endsWith("--units");
    assertThat(place.run(arguments.split(" ", -1))).isEqualTo(ExitStatus.WRONG_USAGE);
    assertThat(place.err()).contains(valueMissing ? "--units needs one of the words" : message);
    assertThat(place.files(".")).isEmpty();
  }
}
