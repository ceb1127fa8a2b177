package taperbook.measure.travel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.measure.recording.Recording;
import taperbook.measure.recording.SocStretch;
import taperbook.model.Estimate;
import taperbook.model.Interval;
import taperbook.model.RowRef;

/**
 * A session without the climb that it began with: below the end of the climb the pace of the
 * stretch right after it is carried on. An inference: no session shows it.
 *
 * <pre>
 *   p = (t(w + L) - t(w)) / L,   L = max(5 %, w - q[1])      [s for each %]
 * </pre>
 */
final class WarmStart {
  /** Narrower stretches tell a pace too badly where the display shows whole per cents. */
  private static final double LEAST_WIDTH = 5;

  private final Recording recording;
  private final Estimate climbEnd;
  private final double firstPercent;

  /**
   * A session whose climb ends somewhere.
   *
   * @param climbEnd where it ends, %
   */
  WarmStart(Recording recording, Estimate climbEnd) {
    this.recording = recording;
    this.climbEnd = climbEnd;
    this.firstPercent = recording.soc().orElseThrow().firstValue();
  }

  double climbEnd() {
    return climbEnd.value();
  }

  /** Width of the stretch whose pace is carried on, %. */
  double width() {
    return width(climbEnd.value());
  }

  private double width(double end) {
    return Math.max(LEAST_WIDTH, end - firstPercent);
  }

  /** Time from a state of charge below the end of the climb to another one, s. */
  Optional<SocStretch> seconds(double from, Estimate to) {
    return overEnds(end -> seconds(from, to, end));
  }

  /** Time that the climb took more than a warm battery would have, s. */
  Optional<SocStretch> lost() {
    return overEnds(
        end -> {
          Optional<SocStretch> climbed =
              SocStretch.of(recording, Estimate.exactly(firstPercent), Estimate.exactly(end));
          return climbed.flatMap(
              c ->
                  pace(end)
                      .map(
                          p ->
                              new SocStretch(
                                  c.seconds().minus(p.seconds().times(end - firstPercent)),
                                  joined(c, p))));
        });
  }

  /**
   * True if the climb surely took longer than the pace after it: else a warm start tells nothing.
   */
  boolean isFaster() {
    return lost().filter(s -> s.seconds().bounds().low() > 0).isPresent();
  }

  private interface ForEnd {
    Optional<SocStretch> of(double end);
  }

  /** The value at the best end of the climb, the bounds over all ends that the fit allows. */
  private Optional<SocStretch> overEnds(ForEnd function) {
    Optional<SocStretch> best = function.of(climbEnd.value());
    if (best.isEmpty()) {
      return best;
    }
    Interval bounds = best.get().seconds().bounds();
    for (double end : new double[] {climbEnd.bounds().low(), climbEnd.bounds().high()}) {
      Optional<SocStretch> other = function.of(Math.max(firstPercent, end));
      if (other.isPresent()) {
        bounds = bounds.hull(other.get().seconds().bounds());
      }
    }
    return Optional.of(
        new SocStretch(new Estimate(best.get().seconds().value(), bounds), best.get().rows()));
  }

  private Optional<SocStretch> seconds(double from, Estimate to, double end) {
    if (end <= from) {
      return SocStretch.of(recording, Estimate.exactly(from), to);
    }
    Optional<SocStretch> pace = pace(end);
    if (pace.isEmpty()) {
      return Optional.empty();
    }
    if (to.value() <= end) {
      Estimate gain = to.minus(Estimate.exactly(from));
      return Optional.of(new SocStretch(pace.get().seconds().times(gain), pace.get().rows()));
    }
    return SocStretch.of(recording, Estimate.exactly(end), to)
        .map(
            rest -> {
              Estimate below = pace.get().seconds().times(end - from);
              Estimate all = rest.seconds().minus(below.times(-1));
              return new SocStretch(all, joined(rest, pace.get()));
            });
  }

  /** Seconds for each per cent right after the climb. */
  private Optional<SocStretch> pace(double end) {
    double width = width(end);
    return SocStretch.of(recording, Estimate.exactly(end), Estimate.exactly(end + width))
        .map(s -> new SocStretch(s.seconds().times(1 / width), s.rows()));
  }

  private static List<RowRef> joined(SocStretch one, SocStretch other) {
    List<RowRef> rows = new ArrayList<>(one.rows());
    rows.addAll(other.rows());
    return rows;
  }
}
