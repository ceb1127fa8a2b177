package taperbook.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import taperbook.result.Curve;
import taperbook.result.LibraryRow;
import taperbook.result.Numbers;

final class RowNamesTest {
  private static final String FINCH = "Northmoor Finch";

  @Test
  void a_single_session_is_named_by_its_car() {
    assertThat(
            names(row("a", FINCH, "2026-04-18", "Quarry Lane"), row("b", "Veldt Carrier", "", "")))
        .containsExactly("Northmoor Finch", "Veldt Carrier");
  }

  @Test
  void several_sessions_of_a_car_are_distinguished_by_day() {
    assertThat(
            names(
                row("a", FINCH, "2026-04-18", "Quarry Lane"),
                row("b", FINCH, "2026-04-20", "Quarry Lane")))
        .containsExactly(
            "Northmoor Finch, 18\u00a0April\u00a02026", "Northmoor Finch, 20\u00a0April\u00a02026");
  }

  @Test
  void sessions_of_one_day_are_distinguished_by_place_and_then_by_number() {
    assertThat(
            names(
                row("a", FINCH, "2026-04-18", "Quarry Lane"),
                row("b", FINCH, "2026-04-18", "Harbour"),
                row("c", FINCH, "2026-04-18", "Harbour"),
                row("d", FINCH, "2026-04-20", "Harbour")))
        .containsExactly(
            "Northmoor Finch, 18\u00a0April\u00a02026, Quarry Lane",
            "Northmoor Finch, 18\u00a0April\u00a02026, Harbour, no. 1",
            "Northmoor Finch, 18\u00a0April\u00a02026, Harbour, no. 2",
            "Northmoor Finch, 20\u00a0April\u00a02026");
  }

  @Test
  void sessions_without_days_and_places_are_numbered() {
    assertThat(names(row("a", FINCH, "", ""), row("b", FINCH, "", "")))
        .containsExactly("Northmoor Finch, no. 1", "Northmoor Finch, no. 2");
  }

  @Test
  void a_list_names_each_car_once() {
    List<LibraryRow> rows =
        List.of(
            row("a", FINCH, "2026-04-18", ""),
            row("b", FINCH, "2026-04-20", ""),
            row("c", "Veldt Carrier", "2026-05-02", ""));
    assertThat(RowNames.of(rows).byCar(rows))
        .containsExactly(
            "Northmoor Finch (18\u00a0April\u00a02026, 20\u00a0April\u00a02026)", "Veldt Carrier");
  }

  private static List<String> names(LibraryRow... rows) {
    RowNames names = RowNames.of(List.of(rows));
    return List.of(rows).stream().map(names::name).toList();
  }

  private static LibraryRow row(String folder, String vehicle, String date, String place) {
    return new LibraryRow(
        folder,
        new LibraryRow.About(
            vehicle,
            Optional.of(date).filter(d -> !d.isEmpty()),
            Optional.of(place).filter(p -> !p.isEmpty()),
            Optional.empty(),
            ""),
        new Numbers(List.of()),
        Curve.EMPTY,
        Set.of());
  }
}
