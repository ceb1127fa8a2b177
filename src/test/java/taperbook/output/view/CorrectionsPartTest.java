package taperbook.output.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import taperbook.format.NumberFormatter;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.Correction;
import taperbook.result.MovedNumber;

final class CorrectionsPartTest {
  private static final LocalDate FIRST = LocalDate.of(2026, 4, 24);
  private static final LocalDate SECOND = LocalDate.of(2026, 5, 2);

  private static final List<String> HEADLINE = List.of("peak_power", "average_power_10_80");

  @Test
  void headline_numbers_come_first_then_larger_changes_and_the_rest_is_counted() {
    List<MovedNumber> moved = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      moved.add(moved("beyond_" + i, "finch", 100, 110, "two"));
    }
    moved.add(moved("within", "finch", 100, 101, "one"));
    moved.add(moved("peak_power", "other", 100, 101, "one"));
    moved.add(moved("average_power_10_80", "finch", 100, 101, "one"));
    moved.add(moved("peak_power", "finch", 100, 101, "one"));
    CorrectionsPart.Entry entry = entries(moved).get(0);
    assertThat(entry.sum())
        .isEqualTo(
            "Since the version of 24 April 2026 24 numbers moved by more than other random draws"
                + " move them, 20 of them beyond the interval that was printed.");
    assertThat(entry.changes()).containsExactly("one", "two");
    assertThat(entry.moved().stream().map(CorrectionsPart.Moved::label))
        .hasSize(14)
        .startsWith("Number peak_power", "Number average_power_10_80", "Number beyond_0");
    assertThat(entry.moved().stream().map(CorrectionsPart.Moved::causes)).startsWith("1", "1", "2");
    assertThat(entry.rest()).isEqualTo("10 more are");
  }

  @Test
  void only_the_latest_correction_lists_numbers() {
    List<MovedNumber> moved = List.of(moved("peak_power", "finch", 100, 110, "one"));
    List<CorrectionsPart.Entry> entries =
        part()
            .of(
                List.of(
                    new Correction(SECOND, FIRST, "first", moved),
                    new Correction(SECOND.plusDays(7), SECOND, "second", moved)));
    assertThat(entries)
        .extracting(CorrectionsPart.Entry::reason)
        .containsExactly("second", "first");
    assertThat(entries.get(0).moved()).hasSize(1);
    assertThat(entries.get(0).rest()).isEmpty();
    assertThat(entries.get(1).moved()).isEmpty();
    assertThat(entries.get(1).changes()).isEmpty();
    assertThat(entries.get(1).rest()).isEqualTo("All are");
  }

  @Test
  void a_correction_without_effect_states_it() {
    assertThat(entries(List.of()).get(0).sum())
        .isEqualTo(
            "Since the version of 24 April 2026 no number moved by more than other random draws"
                + " move it.");
  }

  private static CorrectionsPart part() {
    return new CorrectionsPart("finch", HEADLINE, new NumberFormatter(Unit.KILOMETRE));
  }

  private static List<CorrectionsPart.Entry> entries(List<MovedNumber> moved) {
    return part().of(List.of(new Correction(SECOND, FIRST, "why", moved)));
  }

  private static MovedNumber moved(
      String id, String session, double before, double after, String cause) {
    return new MovedNumber(
        id,
        session,
        "",
        "Number " + id,
        Unit.KILOWATT,
        Optional.of(Estimate.around(before, 5)),
        Optional.of(Estimate.around(after, 5)),
        List.of(cause));
  }
}
