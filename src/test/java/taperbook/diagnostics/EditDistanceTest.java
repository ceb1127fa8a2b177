package taperbook.diagnostics;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class EditDistanceTest {
  /** By hand: one edit for each inserted, deleted, replaced, or transposed letter. */
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
  void edits_are_counted(String a, String b, int edits) {
    assertThat(EditDistance.between(a, b)).isEqualTo(edits);
    assertThat(EditDistance.between(b, a)).isEqualTo(edits);
  }
}
