package taperbook.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import taperbook.result.MovedNumber;

final class NumberMovesTest {
  private static final String WITHHELD =
      "{\"id\": \"mean_power\", \"label\": \"m\", \"value\": null, \"unit\": \"kW\", \"low\": null,"
          + " \"high\": null, \"session\": \"finch\", \"rows\": [], \"withheld\": \"no power was"
          + " recorded\"}";

  @Test
  void a_number_changed_if_the_draws_of_both_versions_do_not_overlap() {
    Resampling before = draws(140, 140.6, 139.5, 140.2, 140.4);
    assertThat(between(before, draws(143, 142.4, 143.3, 142.6, 143.1))).hasSize(1);
    // An equal change, but one draw of the new readings gives the old value.
    assertThat(between(before, draws(143, 142.4, 143.3, 140.3, 143.1))).isEmpty();
  }

  @Test
  void a_change_below_a_tenth_of_the_half_interval_is_ignored() {
    // Half the interval is 10 kW: 0.9 kW are not listed, 1.1 kW are, with draws that never overlap.
    Resampling before = draws(140, 140, 140, 140, 140);
    assertThat(between(before, draws(140.9, 140.9, 140.9, 140.9, 140.9))).isEmpty();
    assertThat(between(before, draws(141.1, 141.1, 141.1, 141.1, 141.1))).hasSize(1);
  }

  @Test
  void a_wider_interval_is_a_change() {
    Resampling before = files(number("140", "130", "150"), number("140", "130", "150"));
    Resampling after = files(number("140", "125", "155"), number("140", "125", "155"));
    assertThat(NumberMoves.between(before, after, true)).hasSize(1);
  }

  @Test
  void an_exact_number_that_only_draws_affect_did_not_change() {
    Resampling before = files(exact("59.28"), exact("59.31"), exact("59.25"));
    assertThat(
            NumberMoves.between(before, files(exact("59.3"), exact("59.26"), exact("59.29")), true))
        .isEmpty();
    assertThat(
            NumberMoves.between(before, files(exact("61.1"), exact("61.2"), exact("61.3")), true))
        .hasSize(1);
  }

  @Test
  void a_newly_withheld_number_has_changed() {
    List<MovedNumber> moved =
        NumberMoves.between(
            files(number("140", "130", "150"), number("140", "130", "150")),
            files(WITHHELD, WITHHELD),
            false);
    assertThat(moved).hasSize(1);
    assertThat(moved.get(0).after()).isEmpty();
    assertThat(moved.get(0).isOutsideInterval()).isTrue();
  }

  @Test
  void a_number_requested_of_one_version_only_has_not_changed() {
    Resampling with = files(number("140", "130", "150"), number("140", "130", "150"));
    Resampling without = files("", "");
    assertThat(NumberMoves.between(with, without, false)).isEmpty();
    // With equal requests it is a lost result.
    assertThat(NumberMoves.between(with, without, true)).hasSize(1);
    assertThat(NumberMoves.between(with, files("", number("140", "130", "150")), true)).isEmpty();
  }

  @Test
  void a_single_draw_must_differ_by_more_than_the_spread_of_the_others() {
    // After a change of program, the published version cannot be resampled.
    Resampling published = draws(140);
    assertThat(between(published, draws(143, 142, 143.5, 142.5))).hasSize(1);
    assertThat(between(published, draws(141.2, 143, 142, 142.5))).isEmpty();
  }

  @Test
  void stated_numbers_change_by_more_than_rounding_errors() {
    assertThat(
            NumberMoves.stated(
                one(number("140", "130", "150")), one(number("140.01", "130", "150"))))
        .hasSize(1);
    assertThat(
            NumberMoves.stated(
                one(number("140", "130", "150")), one(number("140", "130.4", "149.8"))))
        .isEmpty();
    assertThat(NumberMoves.stated(one(number("140", "130", "150")), one(WITHHELD))).hasSize(1);
  }

  private static List<MovedNumber> between(Resampling before, Resampling after) {
    return NumberMoves.between(before, after, true);
  }

  private static Resampling draws(double... values) {
    return new Resampling(
        Arrays.stream(values)
            .mapToObj(v -> one(number("" + v, "" + (v - 10), "" + (v + 10))))
            .toList());
  }

  private static Resampling files(String... numbers) {
    return new Resampling(
        Arrays.stream(numbers).map(NumberMovesTest::one).collect(Collectors.toList()));
  }

  static NumbersFile one(String numbers) {
    String json = "{\"report\": \"r\", \"inputs\": [], \"numbers\": [" + numbers + "]}";
    return NumbersFile.read("numbers.json", json.getBytes(StandardCharsets.UTF_8))
        .value()
        .orElseThrow();
  }

  private static String exact(String value) {
    return number(value, value, value);
  }

  static String number(String value, String low, String high) {
    return "{\"id\": \"mean_power\", \"label\": \"A number\", \"value\": "
        + value
        + ", \"unit\": \"kW\", \"low\": "
        + low
        + ", \"high\": "
        + high
        + ", \"session\": \"finch\", \"rows\": [], \"withheld\": null}";
  }
}
