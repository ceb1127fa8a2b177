package taperbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class SuggestionTest {
  /** Counted by hand: one edit for each letter put in, left out, changed or swapped. */
  @ParameterizedTest
  @CsvSource({
    "soc,soc,0",
    "sco,soc,1",
    "so,soc,1",
    "sooc,soc,1",
    "sac,soc,1",
    "odometre,odometer,1",
    "kitten,sitting,3",
    "'',abc,3",
    "abc,'',3",
    "ab,ba,1",
    "abcd,badc,2"
  })
  void editsAreCounted(String a, String b, int edits) {
    assertThat(Suggestion.distance(a, b)).isEqualTo(edits);
    assertThat(Suggestion.distance(b, a)).isEqualTo(edits);
  }

  @Test
  void nearestNameIsSuggested() {
    assertThat(Suggestion.of("Odo Metr", List.of("odometer", "place"))).contains("odometer");
    assertThat(Suggestion.of("finch-2", List.of("finch-10", "finch-1"))).contains("finch-1");
  }

  @Test
  void longNamesMayDifferByAThird() {
    assertThat(Suggestion.of("battery temp at start", List.of("battery temperature at start")))
        .contains("battery temperature at start");
    assertThat(Suggestion.of("batt t at start", List.of("battery temperature at start"))).isEmpty();
  }

  @Test
  void nameThatSharesNoLetterIsNotSuggested() {
    assertThat(Suggestion.of("xy", List.of("mi"))).isEmpty();
    assertThat(Suggestion.of("entirely different", List.of("soc", "power"))).isEmpty();
    assertThat(Suggestion.of("a", List.of())).isEmpty();
  }

  @Test
  void letterCaseDoesNotFollowTheLocale() {
    assertThat(Suggestion.of("PRICE PER MINUTE", List.of("price per minute")))
        .contains("price per minute");
  }
}
