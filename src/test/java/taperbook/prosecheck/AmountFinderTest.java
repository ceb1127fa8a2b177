package taperbook.prosecheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Meaning of amounts in prose, by arithmetic and unit factors of NIST SP 811. */
final class AmountFinderTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "6 min 27 s | 387",
        "6 minutes and 27 seconds | 387",
        "6:27 | 387",
        "1:02:03 | 3723",
        "1 h 5 min | 3900",
        "six and a half minutes | 390",
        "half an hour | 1800",
        "three quarters of an hour | 2700",
        "a quarter of an hour | 900",
        "an hour and a half | 5400",
        "twenty-five minutes | 1500",
        "ten-minute | 600",
        "1.5 hours | 5400",
        "8,420 km | 8420",
        "82,4 kW | 82.4",
        "a hundred miles | 160.9344",
        "80 per cent | 80",
        "17.1 kWh/100 km | 171",
        "17.1 kWh per 100 kilometres | 171",
        // 1 mi = 1.609344 km: 1000 / (3.5 x 1.609344)
        "3.5 mi/kWh | 177.53463",
        // (68 - 32) / 1.8
        "68 \u00b0F | 20",
        "\u22125 \u00b0C | -5",
        "between 5 and 7 minutes | 360",
        "10\u201380 % | 45",
      })
  void an_amount_is_parsed_with_its_unit(String written, double base) {
    List<Amount> found = AmountFinder.in("It was " + written + " then.");
    assertThat(found).hasSize(1);
    assertThat(found.get(0).base()).isCloseTo(base, within(1e-4));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "version 3.2",
        "14 March 2026",
        "0.59 per kWh",
        "the A81 road",
        "2026-03-14",
        "eight stalls",
        "4 m/s",
        "2.9 bar",
        "km 12"
      })
  void other_amounts_are_ignored(String text) {
    assertThat(AmountFinder.in("It was " + text + " then.")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "about, ABOUT",
    "nearly, NEARLY",
    "just over, JUST_OVER",
    "more than, MORE",
    "well over, MORE",
    "under, LESS",
    "less than, LESS",
    "exactly, NONE"
  })
  void a_word_before_the_amount_qualifies_it(String word, Hedge hedge) {
    assertThat(AmountFinder.in("It took " + word + " 20 minutes.").get(0).hedge()).isEqualTo(hedge);
  }

  @Test
  void a_hedged_amount_permits_the_interval_of_its_wording() {
    assertThat(room("170 kW").contains(174)).isTrue();
    assertThat(room("171 kW").contains(172)).isFalse();
    assertThat(room("about 171 kW").contains(179)).isTrue();
    assertThat(room("about 171 kW").contains(181)).isFalse();
    assertThat(room("nearly 171 kW").contains(160)).isTrue();
    assertThat(room("nearly 171 kW").contains(173)).isFalse();
    assertThat(room("more than 171 kW").contains(400)).isTrue();
    assertThat(room("more than 171 kW").contains(169)).isFalse();
    assertThat(room("less than 4 mi/kWh").contains(130)).isFalse();
    assertThat(room("less than 4 mi/kWh").contains(200)).isTrue();
  }

  private static taperbook.quantity.Interval room(String written) {
    return AmountFinder.in("It was " + written + ".").get(0).interval();
  }
}
