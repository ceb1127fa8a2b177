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
import taperbook.plan.LibraryPlan;
import taperbook.quantity.Estimate;

/**
 * All that was measured for a library.
 *
 * @param plan what it should show
 * @param rows its sessions, by vehicle, then date, then name
 * @param leftOut what could not be taken in, by name
 * @param unusedDrives names of range tests of these vehicles that no number rests on
 * @param byWindow vehicles ranked by the time for the window, for each group of conditions
 * @param byDay vehicles ranked by the time of a day's drive, likewise
 */
public record LibraryResult(
    LibraryPlan plan,
    List<LibraryRow> rows,
    List<LeftOut> leftOut,
    List<String> unusedDrives,
    List<Ranking> byWindow,
    List<Ranking> byDay) {
  /** A library with more sessions than these shows a selection of them. */
  public static final int MOST_SHOWN = 500;

  /** Sessions of such a library that are shown on paper and with their curves. */
  public static final int MOST_IN_DETAIL = 120;

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

  /** The row of a session, if it has one. */
  public Optional<LibraryRow> row(String session) {
    return rows.stream().filter(r -> r.session().equals(session)).findFirst();
  }

  /** True if there are too many sessions to show each of them. */
  public boolean isLarge() {
    return rows.size() > MOST_SHOWN;
  }

  /** The sessions to show in a table for screens: all, or of a large library a selection. */
  public List<LibraryRow> shown() {
    return selected(MOST_SHOWN);
  }

  /** The sessions to show on paper and with their curves: all, or of a large library fewer. */
  public List<LibraryRow> inDetail() {
    return isLarge() ? selected(MOST_IN_DETAIL) : rows;
  }

  /**
   * All rows or, if there are more than so many, the quickest by the time for the window; in the
   * order of all rows.
   */
  private List<LibraryRow> selected(int most) {
    return rows.size() <= most ? rows : quickest(rows, plan.windowTimeId(), most);
  }

  /**
   * The quickest sessions of each vehicle, as many of one as of another as far as they go round,
   * those of the quickest vehicles first; sessions without the time count as slowest.
   *
   * @param rows the sessions to choose from
   * @param id the time to go by
   * @param most how many at the most
   * @return the sessions in their order
   */
  public static List<LibraryRow> quickest(List<LibraryRow> rows, String id, int most) {
    Map<String, List<LibraryRow>> quickest = new LinkedHashMap<>();
    rows.stream()
        .sorted(
            Comparator.comparingDouble((LibraryRow r) -> seconds(r, id))
                .thenComparing(LibraryRow::session))
        .forEach(
            row ->
                quickest.computeIfAbsent(row.about().vehicle(), v -> new ArrayList<>()).add(row));
    Set<LibraryRow> selected = Collections.newSetFromMap(new IdentityHashMap<>());
    for (int rank = 0; selected.size() < Math.min(most, rows.size()); rank++) {
      for (List<LibraryRow> ofVehicle : quickest.values()) {
        if (rank < ofVehicle.size() && selected.size() < most) {
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
