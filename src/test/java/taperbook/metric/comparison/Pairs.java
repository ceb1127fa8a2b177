package taperbook.metric.comparison;

import java.util.Optional;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import taperbook.metric.Sessions;
import taperbook.metric.course.Courses;
import taperbook.metric.course.ReadByHand;
import taperbook.metric.course.TrueCurve;
import taperbook.quantity.Interval;
import taperbook.session.Channel;
import taperbook.session.Session;

/** Pairs of invented sessions read by hand, with few draws. */
final class Pairs {
  /** States of charge that all of these sessions cover, %. */
  static final Interval WINDOW = new Interval(20, 70);

  private Pairs() {}

  static Courses courses(String name, long seed) {
    TrueCurve curve = TrueCurve.random(new Random(seed), 10);
    return new Courses(
        ReadByHand.session(name, curve, new Random(seed)), Optional.empty(), Courses.FEW);
  }

  static Side side(String name, long seed) {
    return Side.of(courses(name, seed)).value().orElseThrow();
  }

  /** Returns a session with these readings as a side. */
  static Side side(
      String name, double socHalfStep, double[] seconds, double[] soc, double[] power) {
    Session session =
        Sessions.session()
            .named(name)
            .channel(Channel.SOC, socHalfStep, seconds, soc)
            .channel(Channel.POWER, 0.5, seconds, power)
            .build();
    return Side.of(new Courses(session, Optional.empty(), Courses.FEW)).value().orElseThrow();
  }

  static Pair pair(long one, long other) {
    return new Pair(side("one", one), side("other", other), WINDOW, 0);
  }

  /** Linear interpolation between the points of a band; at a point its own value. */
  static double between(Band band, double percent, IntToDoubleFunction edge) {
    for (int i = 0; i + 1 < band.size(); i++) {
      double left = band.percent(i);
      double right = band.percent(i + 1);
      if (left <= percent && percent <= right) {
        double share = (percent - left) / (right - left);
        return (1 - share) * edge.applyAsDouble(i) + share * edge.applyAsDouble(i + 1);
      }
    }
    throw new IllegalArgumentException(percent + " % is outside the band");
  }
}
