package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Breakpoints among the abscissae 0, 10, 20, ..., 60, some of them read twice. */
final class UnresolvedBreaksTest {
  private final UnresolvedBreaks rule =
      new UnresolvedBreaks(new double[] {0, 10, 10, 20, 30, 40, 40, 50, 60});

  private boolean[] knots(double... at) {
    return rule.of(Arrays.stream(at).mapToObj(x -> new Break(x, false)).toList());
  }

  @Test
  void segments_with_two_abscissae_of_their_own_resolve_their_breakpoints() {
    assertThat(knots(15, 35)).containsExactly(false, false);
    assertThat(knots(25)).containsExactly(false);
    assertThat(rule.of(List.of())).isEmpty();
  }

  @Test
  void a_drop_between_two_readings_is_unresolved_at_both_ends() {
    // Only 20 lies strictly between.
    assertThat(knots(15, 25)).containsExactly(true, true);
    assertThat(knots(10.5, 30)).containsExactly(true, true);
    assertThat(knots(10.5, 30.5)).containsExactly(false, false);
    assertThat(knots(15, 17, 45)).containsExactly(true, true, false);
  }

  @Test
  void the_first_and_last_segment_need_two_readings_as_well() {
    assertThat(knots(10)).containsExactly(true);
    assertThat(knots(10.5)).containsExactly(false);
    assertThat(knots(50)).containsExactly(true);
    assertThat(knots(49.5)).containsExactly(false);
  }

  @Test
  void a_step_is_always_unresolved_but_not_its_neighbours() {
    assertThat(rule.of(List.of(new Break(15, true), new Break(35, false))))
        .containsExactly(true, false);
  }

  @Test
  void neighbouring_abscissae_are_strictly_below_and_above_and_end_at_the_ends() {
    assertThat(rule.below(25)).isEqualTo(20);
    assertThat(rule.above(25)).isEqualTo(30);
    assertThat(rule.below(20)).isEqualTo(10);
    assertThat(rule.above(20)).isEqualTo(30);
    assertThat(rule.below(0)).isZero();
    assertThat(rule.above(60)).isEqualTo(60);
    assertThat(rule.lowest()).isZero();
    assertThat(rule.highest()).isEqualTo(60);
    assertThat(new UnresolvedBreaks(new double[] {7, 5, 9}).lowest()).isEqualTo(5);
  }

  @Test
  void a_segment_counts_the_abscissae_strictly_inside() {
    List<Break> breaks = List.of(new Break(10, false), new Break(40, false));
    assertThat(rule.hasItsOwn(breaks, 0)).isFalse();
    assertThat(rule.hasItsOwn(breaks, 1)).isTrue();
    assertThat(rule.hasItsOwn(breaks, 2)).isTrue();
  }
}
