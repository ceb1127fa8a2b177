package taperbook.metric.recording;

import java.util.List;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import taperbook.metric.course.Draw;
import taperbook.metric.trip.ChargeTimes;
import taperbook.quantity.Estimate;
import taperbook.result.Curve;
import taperbook.session.RowRef;

/** The stretches of a session that are 10 % wide, one starting at each per cent. */
public final class TenPercent {
  /** Wide enough that rounding to whole per cents is minor, narrow enough to resolve the curve. */
  public static final double WIDTH = 10;

  private final Recording recording;
  private final double[] starts;

  public TenPercent(Recording recording, ChargeTimes clock) {
    this.recording = recording;
    TreeSet<Double> wanted = new TreeSet<>();
    for (double from = clock.low(); from + WIDTH <= clock.high(); from++) {
      wanted.add(from);
    }
    if (clock.high() - WIDTH >= clock.low()) {
      wanted.add(clock.high() - WIDTH);
    }
    this.starts = wanted.stream().mapToDouble(from -> from).toArray();
  }

  /** Returns the time of the stretch that begins at a charge, s. */
  public static double seconds(Draw draw, double from) {
    return draw.seconds(from, from + WIDTH);
  }

  /** Returns the distance added per minute over the stretch from a charge, km/min. */
  public static ToDoubleFunction<Draw> kilometresPerMinute(double from) {
    return d -> d.drive().fullRange() * WIDTH / 100 * 60 / seconds(d, from);
  }

  /** Returns the middle of each stretch, ascending, %. */
  public double[] middles() {
    return DoubleStream.of(starts).map(from -> from + WIDTH / 2).toArray();
  }

  /** Returns the time of each stretch in a draw, s. */
  public double[] seconds(Draw draw) {
    return DoubleStream.of(starts).map(from -> seconds(draw, from)).toArray();
  }

  /** Returns the rows of the stretch whose middle is nearest to a state of charge. */
  public List<RowRef> rowsAt(double percent) {
    double nearest = starts[0];
    for (double from : starts) {
      double here = Math.abs(from + WIDTH / 2 - percent);
      nearest = here < Math.abs(nearest + WIDTH / 2 - percent) ? from : nearest;
    }
    return recording.between(nearest, nearest + WIDTH).rows();
  }

  /** Returns the distance per minute, km/min, over the middle of each stretch, %. */
  public Curve curve() {
    double[] middles = middles();
    return Curve.of(
        starts.length,
        i -> {
          Estimate rate =
              recording
                  .courses()
                  .estimate(kilometresPerMinute(starts[i]))
                  .orElse(Estimate.exactly(0));
          return new Curve.Point(middles[i], rate.value(), rate.bounds(), false);
        });
  }
}
