package taperbook.format;

import taperbook.result.Runs.Spread;

/** Describes the spread between runs in sentences that accompany a comparison. */
public final class RunText {
  /** The normal quantile for a two-sided 95 % interval, JCGM 100:2008, table G.1. */
  private static final double NORMAL_95 = 1.959963984540054;

  private RunText() {}

  /** Returns one sentence on what a comparison of sessions takes into account. */
  public static String ofComparison(Spread spread) {
    return switch (spread.known()) {
      case NOT_MEASURED ->
          "One run of each: how far runs of one car differ was not measured, so a difference may be"
              + " of the runs and not of the cars.";
      case REPEATS ->
          spread.source()
              + " of the reported car spread by "
              + percent(spread.power())
              + " in power (95\u00a0%): differences allow for that, and for as much of each other"
              + " session, which was run once.";
      case STATED ->
          "Differences allow for a spread between runs of "
              + percent(spread.power() / NORMAL_95)
              + " (standard deviation), as stated by the tester: "
              + spread.source()
              + ". Each session is one run.";
    };
  }

  /** Returns a short form, for use beside each claim. */
  public static String inShort(Spread spread) {
    return switch (spread.known()) {
      case NOT_MEASURED -> "One run each; how far runs of one car differ was not measured.";
      case REPEATS ->
          "A spread between runs of "
              + percent(spread.power())
              + " (95\u00a0%, from "
              + spread.source()
              + ") is allowed for.";
      case STATED ->
          "A spread between runs of "
              + percent(spread.power() / NORMAL_95)
              + " (standard deviation, as stated) is allowed for.";
    };
  }

  private static String percent(double share) {
    return PlainDigits.of(100 * share, 2) + "\u00a0%";
  }
}
