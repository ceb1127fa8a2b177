package taperbook.chart.plots;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import taperbook.result.ReportResult;

/** Comparisons that cover the edge cases of charts. */
public final class Comparisons {
  private Comparisons() {}

  static Map<String, ReportResult> all() {
    Map<String, ReportResult> all = new LinkedHashMap<>();
    all.put("two", InventedComparison.of(4, second(), first()));
    all.put("logger-and-hand", InventedComparison.of(5, carrier(), second()));
    all.put("three", InventedComparison.of(4, second(), first(), carrier()));
    all.put("six", six());
    all.put(
        "same-end", InventedComparison.of(3, second(), scaled(0.93, "same end, a little less")));
    all.put("same-curve", InventedComparison.of(3, second(), scaled(1, "the very same curve")));
    all.put("no-window", InventedComparison.of(3, second(), late()));
    all.put("one-without-power", InventedComparison.of(4, second(), first(), powerless()));
    return all;
  }

  public static ReportResult named(String name) {
    return Optional.ofNullable(all().get(name)).orElseThrow();
  }

  public static InventedSession second() {
    return InventedSession.handRead()
        .named("finch-second", "Northmoor Finch, second battery revision")
        .usableKilowattHours(60);
  }

  public static InventedSession first() {
    double[] seconds = {
      0, 30, 75, 120, 180, 250, 340, 450, 560, 660, 770, 880, 990, 1130, 1290, 1480, 1700, 1960
    };
    double[] soc = {14, 15, 17, 19, 22, 26, 31, 38, 44, 49, 54, 58, 62, 66, 70, 74, 78, 82};
    double[] power = {
      58, 70, 85, 96, 118, 130, 135, 134, 132, 124, 119, 112, 96, 90, 76, 70, 61, 55
    };
    return InventedSession.plain(seconds, soc, power)
        .named("finch-first", "Northmoor Finch, first battery revision")
        .usableKilowattHours(59);
  }

  static InventedSession carrier() {
    return InventedSession.logger().named("carrier", "Veldt Carrier").usableKilowattHours(92);
  }

  /** The second session with its power multiplied by a factor. */
  static InventedSession scaled(double factor, String what) {
    return InventedSession.handRead()
        .scaledPower(factor)
        .named("finch-" + factor, "Northmoor Finch, " + what)
        .usableKilowattHours(60);
  }

  private static InventedSession late() {
    return InventedSession.plain(
            new double[] {0, 300, 900, 1800},
            new double[] {84, 89, 95, 100},
            new double[] {44, 35, 20, 8})
        .named("finch-late", "Northmoor Finch, a late stop");
  }

  private static InventedSession powerless() {
    return InventedSession.socAndTime().named("finch-dark", "Northmoor Finch, without power");
  }

  private static ReportResult six() {
    return InventedComparison.of(
        4,
        second(),
        first(),
        carrier(),
        scaled(0.8, "on a cold morning without preparation"),
        scaled(0.6, "at a shared station"),
        any(new Random(5), "a hotter day"));
  }

  /** A random session: a climb to a peak and a fall, 4 to 60 readings. */
  public static InventedSession any(Random random, String what) {
    int n = 4 + random.nextInt(57);
    double[] seconds = new double[n];
    double[] soc = new double[n];
    double[] power = new double[n];
    double start = random.nextInt(50);
    double end = start + 20 + random.nextInt(50 - (int) start / 2);
    double peak = 30 + random.nextInt(220);
    double knee = 0.1 + 0.5 * random.nextDouble();
    for (int i = 0; i < n; i++) {
      double share = (double) i / (n - 1);
      soc[i] = Math.rint(start + (end - start) * share);
      double climb = Math.min(1, 0.5 + 5 * share);
      double fall = share < knee ? 1 : 1 - 0.8 * (share - knee) / (1 - knee);
      power[i] = Math.rint(peak * climb * fall);
      seconds[i] = i == 0 ? 0 : seconds[i - 1] + Math.rint(40 + 120_000.0 / n / (power[i] + 1));
    }
    return InventedSession.plain(seconds, soc, power)
        .named("any-" + what, "Northmoor Finch, " + what)
        .usableKilowattHours(50 + random.nextInt(40));
  }
}
