package taperbook.diagnostics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

final class NearestNamesTest {
  @Test
  void names_the_nearest_first_and_no_distant_name() {
    List<String> known = List.of("energy_added", "peak_powers", "peak_power", "end_soc");
    assertThat(NearestNames.names("peak_powr", known)).containsExactly("peak_power", "peak_powers");
    assertThat(NearestNames.names("zzz", known)).isEmpty();
  }

  @Test
  void names_those_with_the_same_words_in_another_order() {
    List<String> known = List.of("peak_power", "driven_range_full", "driven_distance");
    assertThat(NearestNames.names("range_driven", known)).containsExactly("driven_range_full");
    assertThat(NearestNames.names("range", known)).isEmpty();
  }

  @Test
  void names_those_with_the_typed_prefix() {
    assertThat(NearestNames.names("energy", List.of("energy_added", "end_soc")))
        .containsExactly("energy_added");
  }
}
