package taperbook.measure.recording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.measure.road.ChargeClock;
import taperbook.model.Estimate;
import taperbook.model.Interval;
import taperbook.model.RowRef;

/**
 * The time between two states of charge that are themselves known within bounds.
 *
 * @param seconds the time with its bounds, none below zero, s
 * @param rows the rows it comes from
 */
public record SocStretch(Estimate seconds, List<RowRef> rows) {
  /** The time; empty if one of the two was not reached within the readings. */
  public static Optional<SocStretch> of(Recording recording, Estimate from, Estimate to) {
    Optional<SocTime> start = SocTime.of(recording, from.value(), from.bounds());
    Optional<SocTime> end = SocTime.of(recording, to.value(), to.bounds());
    if (start.isEmpty() || end.isEmpty()) {
      return Optional.empty();
    }
    // Where the display stands still, the reading between two of its values is a step late; lines
    // between the moments of change are not.
    double seconds =
        recording
            .soc()
            .flatMap(ChargeClock::of)
            .map(clock -> clock.seconds(from.value(), to.value()))
            .orElseGet(() -> end.get().second() - start.get().second());
    Interval bounds = end.get().times().minus(start.get().times()).hull(seconds).atLeast(0);
    List<RowRef> rows = new ArrayList<>(start.get().rows());
    rows.addAll(end.get().rows());
    return Optional.of(new SocStretch(new Estimate(seconds, bounds.hull(seconds)), rows));
  }

  /** A state of charge plus a share that is known within bounds, %. */
  public static Estimate plus(double percent, Estimate share) {
    return Estimate.exactly(percent).minus(share.times(-1));
  }
}
