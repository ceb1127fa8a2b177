package taperbook.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import taperbook.i18n.Message;
import taperbook.plan.Basis;
import taperbook.quantity.Unit;
import taperbook.session.Caveat;
import taperbook.session.Input;

/** Inputs of a number determine its caveats; its roles determine where it appears. */
final class MetricTest {
  private static final Caveat RESTARTED =
      new Caveat(Caveat.Kind.ENERGY_COUNTER, Message.verbatim("Restarted."));
  private static final Caveat STOPPED =
      new Caveat(Caveat.Kind.INTERRUPTION, Message.verbatim("Stopped."));
  private static final Caveat WINDY = new Caveat(Caveat.Kind.DRIVE, Message.verbatim("Windy."));

  private static Metric metric(Method method) {
    return Metric.charging("some_number", "Some number", Unit.SECOND, method);
  }

  @Test
  void a_restarted_counter_concerns_only_numbers_that_use_energy() {
    assertThat(metric(Method.TIME_TO_ADD_ENERGY).isConcernedBy(RESTARTED)).isTrue();
    assertThat(metric(Method.TIME_AVERAGE).isConcernedBy(RESTARTED)).isTrue();
    assertThat(metric(Method.WINDOW_TIME).isConcernedBy(RESTARTED)).isFalse();
  }

  @Test
  void a_number_keeps_its_inputs_under_another_method() {
    Metric average = metric(Method.TIME_AVERAGE).with(Method.INTERRUPTIONS);
    assertThat(average.isConcernedBy(RESTARTED)).isTrue();
    assertThat(average.isConcernedBy(STOPPED)).isTrue();
  }

  @Test
  void a_drive_concerns_only_numbers_of_the_road() {
    assertThat(metric(Method.WINDOW_TIME).isConcernedBy(WINDY)).isFalse();
    Metric road = new Metric("a", "A", Unit.SECOND, Method.PLUG_IN, Basis.DRIVEN, Input.ROAD);
    assertThat(road.isConcernedBy(WINDY)).isTrue();
    assertThat(road.isConcernedBy(STOPPED)).isTrue();
  }

  @Test
  void roles_accumulate_and_do_not_depend_on_the_label() {
    assertThat(metric(Method.HOLD).in(Role.HEADLINE).in(Role.CURVE).labelled("Else").roles())
        .containsExactlyInAnyOrder(Role.HEADLINE, Role.CURVE);
  }

  @Test
  void an_id_has_small_letters_digits_and_underscores() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Metric.charging("Peak", "Peak", Unit.KILOWATT, Method.HOLD))
        .withMessageContaining("Peak");
  }
}
