package taperbook.words;

import taperbook.model.Runs.Spread;

/** What is known of how runs differ, in sentences that go with a comparison. */
public final class RunWords {
  /** The normal quantile for 95 % on both sides, JCGM 100:2008, table G.1. */
  private static final double NORMAL_95 = 1.959963984540054;

  private RunWords() {}

  /** What a comparison of sessions takes into account, one sentence. */
  public static String ofComparison(Spread spread) {
    return switch (spread.known()) {
      case NOT_MEASURED ->
          "Each session is one run: how far runs of the same car differ was not measured, so that"
              + " any difference is one of these runs and not surely of the cars.";
      case REPEATS ->
          "Differences allow for the spread between runs, which "
              + spread.source()
              + " of A put at "
              + percent(spread.power())
              + " of the power of one run (95\u00a0%); the same is assumed of the other sessions,"
              + " each of which is one run.";
      case STATED ->
          "Differences allow for a spread between runs of "
              + percent(spread.power() / NORMAL_95)
              + " (standard deviation), as stated by the tester: "
              + spread.source()
              + ". Each session is one run.";
    };
  }

  /** The same in a few words, for the place of each claim. */
  public static String inShort(Spread spread) {
    return switch (spread.known()) {
      case NOT_MEASURED -> "One run each; how far runs of the same car differ was not measured.";
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
