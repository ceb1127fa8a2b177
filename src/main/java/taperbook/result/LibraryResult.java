package taperbook.result;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import taperbook.plan.LibraryPlan;
import taperbook.quantity.Estimate;

/**
 * All results for a library.
 *
 * @param plan the library's settings
 * @param rows its sessions, sorted by vehicle, then date, then name
 * @param leftOut folders that were left out, by name
 * @param unusedDrives names of range tests of these vehicles that no number uses
 * @param byWindow vehicles ranked by the time for the window, for each group of conditions
 * @param byDay vehicles ranked by the time of a day's drive, likewise
 */
public record LibraryResult(
    LibraryPlan plan,
    List<LibraryRow> rows,
    List<LeftOut> leftOut,
    List<String> unusedDrives,
    List<Ranking> byWindow,
    List<Ranking> byDay)
    implements Results {
  /** Maximum number of sessions that a library shows; a larger library shows a selection. */
  public static final int MAX_SHOWN = 500;

  /** Maximum number of sessions of such a library that are printed on paper and with curves. */
  public static final int MAX_IN_DETAIL = 120;

  private static final Comparator<LibraryRow> ORDER =
      Comparator.comparing((LibraryRow r) -> r.about().vehicle())
          .thenComparing(r -> r.about().date().orElse(""))
          .thenComparing(LibraryRow::session);

  /** Sorts the rows. */
  public LibraryResult {
    rows = rows.stream().sorted(ORDER).toList();
    leftOut = List.copyOf(leftOut);
    unusedDrives = List.copyOf(unusedDrives);
    byWindow = List.copyOf(byWindow);
    byDay = List.copyOf(byDay);
  }

  /** Returns the row of a session, if present. */
  public Optional<LibraryRow> row(String session) {
    return rows.stream().filter(r -> r.session().equals(session)).findFirst();
  }

  @Override
  public List<Numbers> numbers() {
    return rows.stream().map(LibraryRow::numbers).toList();
  }

  @Override
  public Stream<String> days() {
    return rows.stream().flatMap(r -> r.about().date().stream());
  }

  @Override
  public boolean isLarge() {
    return rows.size() > MAX_SHOWN;
  }

  /** Returns the sessions to show in a table on screen: all, or a selection for a large library. */
  public List<LibraryRow> shown() {
    return selected(MAX_SHOWN);
  }

  /**
   * Returns the sessions to show on paper and with curves: all, or a smaller selection for a large
   * library.
   */
  public List<LibraryRow> inDetail() {
    return isLarge() ? selected(MAX_IN_DETAIL) : rows;
  }

  /**
   * Returns all rows or, if there are more than the maximum, the quickest by the time for the
   * window; in the order of all rows.
   */
  private List<LibraryRow> selected(int max) {
    return rows.size() <= max ? rows : quickest(rows, plan.windowTimeId(), max);
  }

  /**
   * Selects the quickest sessions of each vehicle, in rounds of one session per vehicle starting
   * with the quickest vehicle; sessions without the time count as slowest.
   *
   * @param rows the sessions to choose from
   * @param id the number to sort by
   * @param max maximum number of sessions
   * @return the sessions in their original order
   */
  public static List<LibraryRow> quickest(List<LibraryRow> rows, String id, int max) {
    Map<String, List<LibraryRow>> quickest = new LinkedHashMap<>();
    rows.stream()
        .sorted(
            Comparator.comparingDouble((LibraryRow r) -> seconds(r, id))
                .thenComparing(LibraryRow::session))
        .forEach(
            row ->
                quickest.computeIfAbsent(row.about().vehicle(), v -> new ArrayList<>()).add(row));
    Set<LibraryRow> selected = Collections.newSetFromMap(new IdentityHashMap<>());
    for (int rank = 0; selected.size() < Math.min(max, rows.size()); rank++) {
      for (List<LibraryRow> ofVehicle : quickest.values()) {
        if (rank < ofVehicle.size() && selected.size() < max) {
          selected.add(ofVehicle.get(rank));
        }
      }
    }
    return rows.stream().filter(selected::contains).toList();
  }

  private static double seconds(LibraryRow row, String id) {
    return row.numbers().estimate(id).map(Estimate::value).orElse(Double.POSITIVE_INFINITY);
  }
}
