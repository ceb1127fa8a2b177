package taperbook.metric.course;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import taperbook.metric.Sessions;
import taperbook.session.Channel;
import taperbook.session.Session;

/** Readings of true curves as a person takes them from a film of the displays. */
public final class ReadByHand {
  private ReadByHand() {}

  /** Rounds and thins the readings, with some empty cells. */
  public static Session session(String name, TrueCurve curve, Random random) {
    boolean asItChanges = random.nextBoolean();
    double end = curve.second(82 + 8 * random.nextDouble());
    int rows = 14 + random.nextInt(20);
    List<Double> moments = new ArrayList<>(List.of(0.0));
    for (int i = 1; i < rows - 1; i++) {
      double moment = end * (i + 0.7 * (random.nextDouble() - 0.5)) / (rows - 1);
      if (asItChanges) {
        // The first frame, of 25 per second, that shows the next per cent.
        moment = curve.second(Math.rint(curve.soc(moment)) + 0.5) + 0.04 * random.nextDouble();
      }
      moments.add(moment);
    }
    moments.add(end);
    double[] true_ = moments.stream().mapToDouble(m -> m).distinct().sorted().toArray();
    double[] seconds = Arrays.stream(true_).map(Math::rint).toArray();
    double[] soc = Arrays.stream(true_).map(t -> Math.rint(curve.soc(t))).toArray();
    double[] power = Arrays.stream(true_).map(t -> Math.rint(curve.power(curve.soc(t)))).toArray();
    double[] energy =
        Arrays.stream(true_)
            .map(t -> (curve.soc(t) - curve.start()) / 100 * curve.capacity())
            .map(e -> Math.rint(10 * e) / 10)
            .toArray();
    for (int i = 1; i < true_.length - 1; i++) {
      if (random.nextInt(5) == 0) {
        energy[i] = Double.NaN;
      }
      if (random.nextInt(12) == 0) {
        power[i] = Double.NaN;
      }
    }
    return Sessions.session()
        .named(name)
        .clockHalfStep(0.5)
        .channel(Channel.SOC, 0.5, seconds, soc)
        .channel(Channel.POWER, 0.5, seconds, power)
        .channel(Channel.ENERGY_ADDED, 0.05, seconds, energy)
        .build();
  }
}
