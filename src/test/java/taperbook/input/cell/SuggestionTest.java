package taperbook.input.cell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

final class SuggestionTest {
  @Test
  void nearest_name_is_suggested() {
    assertThat(Suggestion.of("Odo Metr", List.of("odometer", "place"))).contains("odometer");
    assertThat(Suggestion.of("finch-2", List.of("finch-10", "finch-1"))).contains("finch-1");
  }

  @Test
  void long_names_may_differ_by_a_third() {
    assertThat(Suggestion.of("battery temp at start", List.of("battery temperature at start")))
        .contains("battery temperature at start");
    assertThat(Suggestion.of("batt t at start", List.of("battery temperature at start"))).isEmpty();
  }

  @Test
  void name_that_shares_no_letter_is_not_suggested() {
    assertThat(Suggestion.of("xy", List.of("mi"))).isEmpty();
    assertThat(Suggestion.of("entirely different", List.of("soc", "power"))).isEmpty();
    assertThat(Suggestion.of("a", List.of())).isEmpty();
  }

  @Test
  void letter_case_does_not_follow_the_locale() {
    assertThat(Suggestion.of("PRICE PER MINUTE", List.of("price per minute")))
        .contains("price per minute");
  }
}
