package taperbook.metric.recording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import taperbook.i18n.Message;
import taperbook.session.RowRef;

/** A value with its rows, or the first reason why there is none. */
final class FindingTest {
  private static final RowRef ONE = new RowRef("readings.csv", 7);
  private static final RowRef TWO = new RowRef("range-test.csv", 3);
  private static final Message NO_CHARGE = Message.of("metric.recording.no_state_of_charge_was");
  private static final Message NO_POWER = Message.of("metric.recording.no_power_was_recorded");

  private final Finding<Integer> seven = Finding.of(7, List.of(ONE));
  private final Finding<Integer> noCharge = Finding.missing(NO_CHARGE);
  private final Finding<Integer> noPower = Finding.missing(NO_POWER);

  @Test
  void a_combination_has_the_rows_of_both() {
    Finding<Integer> sum = seven.flatMap(a -> Finding.of(a + 4, List.of(TWO)));
    assertThat(sum.value()).contains(11);
    assertThat(sum.rows()).containsExactly(TWO, ONE);
    assertThat(seven.and(Finding.of("x", List.of(TWO))))
        .isEqualTo(Finding.of(7, List.of(ONE, TWO)));
  }

  @Test
  void the_first_reason_remains() {
    assertThat(noCharge.flatMap(a -> noPower).reason()).contains(NO_CHARGE);
    assertThat(seven.and(noPower).and(noCharge).reason()).contains(NO_POWER);
    assertThat(noCharge.map(a -> a + 1).filter(a -> false, NO_POWER).reason()).contains(NO_CHARGE);
    assertThat(noCharge.from(a -> List.of(ONE)).rows()).isEmpty();
  }

  @Test
  void a_function_keeps_the_rows() {
    assertThat(seven.map(a -> a * 2)).isEqualTo(Finding.of(14, List.of(ONE)));
    assertThat(seven.from(a -> List.of(TWO))).isEqualTo(Finding.of(7, List.of(ONE, TWO)));
  }

  @Test
  void a_condition_that_fails_gives_its_reason() {
    assertThat(seven.filter(a -> a > 6, NO_POWER)).isEqualTo(seven);
    assertThat(seven.filter(a -> a > 7, NO_POWER)).isEqualTo(noPower);
  }

  @Test
  void an_empty_value_gives_the_reason() {
    assertThat(Finding.of(Optional.of(7), NO_POWER)).isEqualTo(Finding.of(7, List.of()));
    assertThat(Finding.of(Optional.empty(), NO_POWER).reason()).contains(NO_POWER);
  }

  @Test
  void another_is_taken_only_if_there_is_no_value() {
    assertThat(seven.or(() -> noPower)).isEqualTo(seven);
    assertThat(noCharge.or(() -> seven)).isEqualTo(seven);
  }
}
