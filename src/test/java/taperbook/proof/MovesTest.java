package taperbook.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import taperbook.model.InputFile;
import taperbook.model.MovedNumber;

final class MovesTest {
  private static final String READINGS = "sessions/finch/readings.csv";
  private static final String BEFORE = "elapsed [s],power [kW]\n0,100\n60,160\n120,150\n";
  private static final String AFTER = "elapsed [s],power [kW]\n0,100\n60,166\n120,150\n";

  @Test
  void a_number_that_moved_names_the_row_that_caused_it() {
    List<MovedNumber> moved =
        between(
            number("peak_power", "160", "159.5", "160.5", 3)
                + ","
                + number("start_power", "100", "99.5", "100.5", 2),
            number("peak_power", "166", "165.5", "166.5", 3)
                + ","
                + number("start_power", "100", "99.5", "100.5", 2),
            AFTER,
            "Taperbook 1");
    assertThat(moved).hasSize(1);
    MovedNumber peak = moved.get(0);
    assertThat(peak.id()).isEqualTo("peak_power");
    assertThat(peak.beyond()).isTrue();
    assertThat(peak.before().orElseThrow().value()).isEqualTo(160);
    assertThat(peak.after().orElseThrow().value()).isEqualTo(166);
    assertThat(peak.causes())
        .containsExactly(READINGS + ":3: \u201c60,160\u201d became \u201c60,166\u201d");
  }

  @Test
  void a_move_within_the_old_interval_is_told_as_such() {
    List<MovedNumber> moved =
        between(
            number("mean_power", "140", "130", "150", 4),
            number("mean_power", "143", "133", "153", 4),
            AFTER,
            "Taperbook 1");
    assertThat(moved).hasSize(1);
    assertThat(moved.get(0).beyond()).isFalse();
    // It does not rest on the changed row itself, but on the file that it stands in.
    assertThat(moved.get(0).causes()).hasSize(1);
  }

  @Test
  void noise_of_a_simulated_interval_is_no_move() {
    assertThat(
            between(
                number("mean_power", "140", "130", "150", 4),
                number("mean_power", "140", "130.4", "149.8", 4),
                AFTER,
                "Taperbook 1"))
        .isEmpty();
  }

  @Test
  void a_number_that_is_withheld_now_has_moved() {
    List<MovedNumber> moved =
        between(
            number("mean_power", "140", "130", "150", 4),
            "{\"id\": \"mean_power\", \"label\": \"m\", \"value\": null, \"unit\": \"kW\", \"low\":"
                + " null, \"high\": null, \"session\": \"finch\", \"rows\": [], \"withheld\":"
                + " \"no power was recorded\"}",
            AFTER,
            "Taperbook 1");
    assertThat(moved).hasSize(1);
    assertThat(moved.get(0).after()).isEmpty();
    assertThat(moved.get(0).beyond()).isTrue();
  }

  @Test
  void another_program_is_named_where_no_row_was_changed() {
    List<MovedNumber> moved =
        between(
            number("mean_power", "140", "130", "150", 4),
            number("mean_power", "141", "131", "151", 4),
            BEFORE,
            "Taperbook 2");
    assertThat(moved.get(0).causes()).containsExactly("Taperbook 1 was replaced by Taperbook 2");
  }

  private static List<MovedNumber> between(
      String numbersBefore, String numbersAfter, String readingsAfter, String program) {
    CarriedReport before =
        new CarriedReport(
            Map.of(READINGS, file(BEFORE)),
            read(numbersBefore),
            "Taperbook 1",
            LocalDate.of(2026, 4, 24),
            List.of(),
            "");
    return Moves.between(
        before, read(numbersAfter), Map.of(READINGS, file(readingsAfter)), program);
  }

  private static InputFile file(String text) {
    return new InputFile(READINGS, text.getBytes(StandardCharsets.UTF_8));
  }

  private static NumbersFile read(String numbers) {
    String json = "{\"report\": \"r\", \"inputs\": [], \"numbers\": [" + numbers + "]}";
    return NumbersFile.read("numbers.json", json.getBytes(StandardCharsets.UTF_8))
        .value()
        .orElseThrow();
  }

  private static String number(String id, String value, String low, String high, int line) {
    return "{\"id\": \""
        + id
        + "\", \"label\": \"A number\", \"value\": "
        + value
        + ", \"unit\": \"kW\", \"low\": "
        + low
        + ", \"high\": "
        + high
        + ", \"session\": \"finch\", \"rows\": [\""
        + READINGS
        + ":"
        + line
        + "\"], \"withheld\": null}";
  }
}
