package taperbook.prosecheck;

import java.util.regex.Pattern;
import taperbook.quantity.Interval;

/**
 * Words that qualify an amount, and the interval that they permit. The interval of each word is our
 * interpretation of common usage, no source.
 */
enum Hedge {
  /** The amount as written, plus or minus its last digit. */
  NONE("", ""),
  /** Plus or minus 5 %, or one unit of the last digit if that is more. */
  ABOUT(
      "about|around|roughly|approximately|some|circa|ca\\.|more or less|or so",
      "or so|or thereabouts|give or take"),
  /** Up to 10 % less. */
  NEARLY("nearly|almost|just under|a little under|just below|close to|not quite|just short of", ""),
  /** Up to 10 % more. */
  JUST_OVER("just over|a little over|just above|a little more than|slightly more than", ""),
  /** Any amount from the written one up. */
  MORE(
      "more than|(?:well )?over|(?:well )?above|at least|upwards of|no less than|in excess of",
      "or more|and more|plus"),
  /** Any amount up to the written one. */
  LESS(
      "less than|(?:well )?under|(?:well )?below|at most|no more than|within|fewer than|short of",
      "or less");

  private static final double ABOUT_SHARE = 0.05;
  private static final double NEAR_SHARE = 0.1;
  private static final double ROUND_SHARE = 0.025;
  private static final double ROUND_STEP = 10;
  private static final double FAR = 1e6;

  private static final int LONGEST = 40;

  private final Pattern before;
  private final Pattern after;

  Hedge(String before, String after) {
    this.before = Pattern.compile("(?i)(?:^|[^\\w-])(?:" + before + ")\\s+(?:an? |the |a full )?$");
    this.after = Pattern.compile("(?i)^,?\\s+(?:" + after + ")\\b");
  }

  /** Returns the hedge next to an amount. */
  static Hedge beside(String left, String right) {
    String near = left.substring(Math.max(0, left.length() - LONGEST));
    // More specific words first: "just over" ends in "over".
    for (Hedge hedge : new Hedge[] {ABOUT, NEARLY, JUST_OVER, MORE, LESS}) {
      boolean behind = !hedge.after.pattern().contains("(?:)") && hedge.after.matcher(right).find();
      if (hedge.before.matcher(near).find() || behind) {
        return hedge;
      }
    }
    return NONE;
  }

  /**
   * Returns the amounts that a writer may have meant.
   *
   * @param low smaller amount written, in any unit
   * @param high larger amount written; equal to {@code low} except for a range
   * @param step value of one unit of the last digit, in the same unit
   * @param rounds whether a multiple of ten may be a rounded amount
   */
  Interval interval(double low, double high, double step, boolean rounds) {
    double half = step / 2;
    double above = Math.abs(high);
    return switch (this) {
      case NONE -> {
        boolean round = rounds && low == high && low >= ROUND_STEP && low % ROUND_STEP == 0;
        double slack = round ? Math.max(half, low * ROUND_SHARE) : half;
        yield new Interval(low - slack, high + slack);
      }
      case ABOUT ->
          new Interval(
              low - Math.max(step, Math.abs(low) * ABOUT_SHARE),
              high + Math.max(step, above * ABOUT_SHARE));
      case NEARLY -> new Interval(low - Math.max(step, Math.abs(low) * NEAR_SHARE), high + half);
      case JUST_OVER -> new Interval(low - half, high + Math.max(step, above * NEAR_SHARE));
      case MORE -> new Interval(low - half, FAR);
      case LESS -> new Interval(-FAR, high + half);
    };
  }
}
