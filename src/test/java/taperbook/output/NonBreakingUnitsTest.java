package taperbook.output;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class NonBreakingUnitsTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "0.9\u00a0Wh/km",
        "273.6\u00a0Wh/mi",
        "17.2\u00a0kWh/100\u00a0km",
        "0.75\u00a0kWh/%",
        "\u22122.48\u00a0kW/%",
        "\u22123\u00a0m/s"
      })
  void keeps_a_value_and_its_unit_together(String value) {
    assertThat(NonBreakingUnits.kept("<p>differ by " + value + ".</p>"))
        .isEqualTo("<p>differ by <span class=\"unit\">" + value + "</span>.</p>");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<p>10\u00a0kW and figures/km and and/or</p>",
        "<title>0.9\u00a0Wh/km</title>",
        "<style>a{content:'1\u00a0km/h'}</style>",
        "<svg><text>Wh/km</text></svg>",
        "<svg><text>10 km</text></svg>",
        "<pre>10 km</pre>",
        "<div aria-label=\"1 > 0, 5\u00a0Wh/km\">x</div>",
      })
  void keeps_other_text_unchanged(String page) {
    assertThat(NonBreakingUnits.kept(page)).isEqualTo(page);
  }

  @ParameterizedTest
  @CsvSource({
    "from 10 % to 80 % it takes, from 10~% to 80~% it takes",
    "'add 100 km, or 60 mi.', 'add 100~km, or 60~mi.'",
    "(give or take 14 s), (give or take 14~s)",
    "at 27 °C&nbsp;outside, at 27~°C&nbsp;outside",
    "held 168 kW/battery 2 A, held 168 kW/battery 2~A",
  })
  void inserts_a_non_breaking_space_in_an_amount(String typed, String kept) {
    assertThat(NonBreakingUnits.kept("<p title=\"5 km\">" + typed + "</p>"))
        .isEqualTo("<p title=\"5 km\">" + kept.replace('~', '\u00a0') + "</p>");
  }

  @ParameterizedTest
  @ValueSource(strings = {"2 sessions", "24 minutes", "lap 1 <b>%</b>", "6 modes, 7 km2", "3 a"})
  void keeps_spaces_before_other_words(String text) {
    assertThat(NonBreakingUnits.kept(text)).isEqualTo(text);
  }

  @Test
  void keeps_a_dollar_sign_as_it_is() {
    assertThat(NonBreakingUnits.kept("$1 at 5\u00a0km/h"))
        .isEqualTo("$1 at <span class=\"unit\">5\u00a0km/h</span>");
  }
}
