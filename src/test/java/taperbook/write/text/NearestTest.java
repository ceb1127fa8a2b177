package taperbook.write.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class NearestTest {
  @ParameterizedTest
  // The first is the textbook case of Wagner and Fischer's algorithm; the others are by hand.
  @CsvSource({"kitten, sitting, 3", "peak, peak, 0", "peak, '', 4", "'', peak, 4", "pek, peak, 1"})
  void countsLettersPutInTakenOutOrReplaced(String a, String b, int distance) {
    assertThat(Nearest.distance(a, b)).isEqualTo(distance);
    assertThat(Nearest.distance(b, a)).isEqualTo(distance);
  }

  @Test
  void namesTheNearestFirstAndNoneThatIsFar() {
    List<String> known = List.of("energy_added", "peak_powers", "peak_power", "end_soc");
    assertThat(Nearest.names("peak_powr", known)).containsExactly("peak_power", "peak_powers");
    assertThat(Nearest.names("zzz", known)).isEmpty();
  }
}
