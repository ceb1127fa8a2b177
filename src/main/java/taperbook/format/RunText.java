package taperbook.format;

import taperbook.i18n.Texts;
import taperbook.result.Runs.Spread;

/** Describes the spread between runs in sentences that accompany a comparison. */
public final class RunText {
  /** The normal quantile for a two-sided 95 % interval, JCGM 100:2008, table G.1. */
  private static final double NORMAL_95 = 1.959963984540054;

  private RunText() {}

  /** Returns one sentence on what a comparison of sessions takes into account. */
  public static String ofComparison(Spread spread) {
    return switch (spread.known()) {
      case NOT_MEASURED -> Texts.of("format.run_text.one_run_of_each_how");
      case REPEATS ->
          Texts.of(
              "format.run_text.of_reported_car_spread_by",
              spread.source(),
              percent(spread.power()));
      case STATED ->
          Texts.of(
              "format.run_text.differences_allow_for_spread_between",
              percent(spread.power() / NORMAL_95),
              spread.source());
    };
  }

  /** Returns a short form, for use beside each claim. */
  public static String inShort(Spread spread) {
    return switch (spread.known()) {
      case NOT_MEASURED -> Texts.of("format.run_text.one_run_each_how_far");
      case REPEATS ->
          Texts.of(
              "format.run_text.spread_between_runs_of_95",
              percent(spread.power()),
              spread.source());
      case STATED ->
          Texts.of(
              "format.run_text.spread_between_runs_of_standard",
              percent(spread.power() / NORMAL_95));
    };
  }

  private static String percent(double share) {
    return PlainDigits.of(100 * share, 2) + "\u00a0%";
  }
}
