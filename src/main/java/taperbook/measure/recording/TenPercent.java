package taperbook.measure.recording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import taperbook.measure.road.ChargeClock;
import taperbook.model.Curve;
import taperbook.model.Estimate;
import taperbook.model.RowRef;

/** The stretches of a session that are 10 % wide, one for each per cent to begin at. */
public final class TenPercent {
  /** Wide enough that the rounding of whole per cents does not decide, narrow enough to tell. */
  public static final double WIDTH = 10;

  private final List<Double> starts = new ArrayList<>();
  private final List<SocStretch> stretches = new ArrayList<>();

  public TenPercent(Recording recording, ChargeClock clock) {
    TreeSet<Double> wanted = new TreeSet<>();
    for (double from = clock.low(); from + WIDTH <= clock.high(); from++) {
      wanted.add(from);
    }
    if (clock.high() - WIDTH >= clock.low()) {
      wanted.add(clock.high() - WIDTH);
    }
    for (double from : wanted) {
      Optional<SocStretch> stretch =
          from(recording, from).filter(s -> s.seconds().bounds().low() > 0);
      if (stretch.isPresent()) {
        starts.add(from);
        stretches.add(stretch.get());
      }
    }
  }

  /** The stretch that begins at a state of charge; empty if it was not recorded. */
  public static Optional<SocStretch> from(Recording recording, double percent) {
    return SocStretch.of(recording, Estimate.exactly(percent), Estimate.exactly(percent + WIDTH));
  }

  /**
   * Distance that a minute of a stretch buys, km/min.
   *
   * @param full driven range of a full battery, km
   * @param stretch a stretch that surely takes time
   */
  public static Estimate kilometresPerMinute(Estimate full, SocStretch stretch) {
    return full.times(WIDTH / 100 * 60).over(stretch.seconds());
  }

  /** Middle of each stretch, rising, %. */
  public double[] middles() {
    return starts.stream().mapToDouble(from -> from + WIDTH / 2).toArray();
  }

  /** Time of each stretch, s. */
  public double[] seconds() {
    return times(Estimate::value);
  }

  /** Most time that each stretch may have taken, s. */
  public double[] most() {
    return times(e -> e.bounds().high());
  }

  /** Least time that each stretch may have taken, s. */
  public double[] least() {
    return times(e -> e.bounds().low());
  }

  private double[] times(ToDoubleFunction<Estimate> which) {
    return stretches.stream().map(SocStretch::seconds).mapToDouble(which).toArray();
  }

  /** Rows of the stretch whose middle is nearest to a state of charge. */
  public List<RowRef> rowsAt(double percent) {
    int nearest = 0;
    for (int i = 1; i < starts.size(); i++) {
      double here = Math.abs(starts.get(i) + WIDTH / 2 - percent);
      nearest = here < Math.abs(starts.get(nearest) + WIDTH / 2 - percent) ? i : nearest;
    }
    return stretches.get(nearest).rows();
  }

  /** Distance for each minute, km/min, over the middle of each stretch, %. */
  public Curve curve(Estimate full) {
    int n = starts.size();
    double[] y = new double[n];
    double[] low = new double[n];
    double[] high = new double[n];
    for (int i = 0; i < n; i++) {
      Estimate rate = kilometresPerMinute(full, stretches.get(i));
      y[i] = rate.value();
      low[i] = rate.bounds().low();
      high[i] = rate.bounds().high();
    }
    return new Curve(middles(), y, low, high, new boolean[n]);
  }
}
