package taperbook.metric.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.StopTimes;

/** Computes {@link StopTimes}: the plug-in table for additional charges and distances. */
public final class StopTimesTable {
  private static final int FULL = 100;

  /** Distances of a row in steps of 10 km or 5 miles. */
  private static final WantedDistance KILOMETRES = new WantedDistance(10, Unit.KILOMETRE);

  private static final WantedDistance MILES = new WantedDistance(5, Unit.MILE);

  private StopTimesTable() {}

  /**
   * Computes the charging times of a session.
   *
   * @param units unit of distance of the report
   * @return the times; empty if charge was not recorded or no range test was driven
   */
  public static Optional<StopTimes> of(Recording recording, RangeFigures range, Unit units) {
    Optional<Estimate> full = range.fullRange().value();
    if (recording.soc().isEmpty() || full.isEmpty()) {
      return Optional.empty();
    }
    WantedDistance step = units == Unit.MILE ? MILES : KILOMETRES;
    double share = FULL * step.kilometres() / full.get().value();
    double last = recording.soc().get().lastValue();
    int first = 0;
    List<List<Estimate>> rows = new ArrayList<>();
    for (int from = 0; from + share <= last; from++) {
      List<Estimate> row =
          recording.reached(from).value().isEmpty()
              ? List.of()
              : row(recording, from, step.kilometres(), share);
      if (!row.isEmpty()) {
        first = rows.isEmpty() ? from : first;
        rows.add(row);
      } else if (!rows.isEmpty()) {
        break;
      }
    }
    return rows.isEmpty() ? Optional.empty() : Optional.of(new StopTimes(first, step, rows));
  }

  private static List<Estimate> row(Recording recording, int from, double step, double share) {
    List<Estimate> row = new ArrayList<>();
    boolean reached = true;
    for (int k = 1; reached; k++) {
      double km = k * step;
      Optional<Estimate> seconds =
          recording.reached(from + k * share).value().isEmpty()
              ? Optional.empty()
              : recording.courses().estimate(d -> d.seconds(from, from + d.share(km)));
      seconds.ifPresent(row::add);
      reached = seconds.isPresent();
    }
    return row;
  }
}
