package taperbook.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import taperbook.result.MovedNumber;

/** The number changed from 140 to 150 kW; reverting a change restores the given part of it. */
final class ChangeCausesTest {
  private static final Resampling BEFORE = draws(140, 140.2, 139.8);
  private static final Resampling AFTER = draws(150, 150.2, 149.8);

  @Test
  void the_change_whose_reversal_restores_the_number_is_its_cause() {
    ChangeCauses causes = causes();
    causes.enter("one", draws(140.1, 139.9));
    causes.enter("other", draws(150.1, 149.9));
    assertThat(named(causes)).containsExactly("one");
  }

  @Test
  void two_contributing_changes_are_both_named() {
    ChangeCauses causes = causes();
    causes.enter("six", draws(144, 144.1));
    causes.enter("four", draws(146, 146.1));
    causes.enter("a tenth", draws(149, 149.1));
    assertThat(named(causes)).containsExactly("six", "four");
  }

  @Test
  void changes_without_individual_effect_are_a_joint_cause() {
    ChangeCauses causes = causes();
    causes.enter("one", draws(150.1, 149.9));
    causes.enter("other", draws(149, 149.1));
    assertThat(named(causes)).containsExactly("one", "other");
  }

  @Test
  void the_program_is_the_cause_if_the_data_did_not_change() {
    ChangeCauses causes = causes();
    causes.enter("one", draws(150.1, 149.9));
    causes.enter("program");
    assertThat(named(causes)).containsExactly("program");
  }

  @Test
  void a_single_change_is_the_cause_without_reversal() {
    ChangeCauses causes = causes();
    causes.enter("one");
    assertThat(named(causes)).containsExactly("one");
  }

  private static ChangeCauses causes() {
    return new ChangeCauses(BEFORE, AFTER);
  }

  private static List<String> named(ChangeCauses causes) {
    List<MovedNumber> moved = NumberMoves.between(BEFORE, AFTER, true);
    assertThat(moved).hasSize(1);
    return causes.name(moved).get(0).causes();
  }

  private static Resampling draws(double... values) {
    return new Resampling(
        Arrays.stream(values)
            .mapToObj(
                v ->
                    NumberMovesTest.one(NumberMovesTest.number("" + v, "" + (v - 5), "" + (v + 5))))
            .toList());
  }
}
