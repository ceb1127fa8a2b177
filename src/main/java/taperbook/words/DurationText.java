package taperbook.words;

import taperbook.model.Interval;
import taperbook.model.Unit;

/**
 * Times in words: {@code 24 min 40 s}, {@code 1 h 5 min}. No-break spaces keep a time in one line.
 */
final class DurationText {
  private static final char NBSP = '\u00a0';

  private DurationText() {}

  /**
   * The step in seconds that a time with the given interval is worth printing to: two significant
   * digits of its half-width at most, and never finer than one second for times over a minute.
   */
  static int step(Interval bounds) {
    return step(bounds.width() / 2);
  }

  /** The step in seconds for a half-width in seconds. */
  static int step(double half) {
    return half < 100 ? 1 : half < 1000 ? 10 : 60;
  }

  static String nearest(double seconds, int step) {
    return words(rounded(seconds, step), step);
  }

  static long rounded(double seconds, int step) {
    return Math.round(seconds / step) * step;
  }

  static String down(double seconds, int step) {
    return words((long) Math.floor(seconds / step + 1e-6) * step, step);
  }

  static String up(double seconds, int step) {
    return words((long) Math.ceil(seconds / step - 1e-6) * step, step);
  }

  private static String words(long seconds, int step) {
    String sign = seconds < 0 ? "\u2212" : "";
    long rest = Math.abs(seconds);
    long hours = rest / 3600;
    long minutes = rest % 3600 / 60;
    long secs = rest % 60;
    StringBuilder text = new StringBuilder(sign);
    if (hours > 0) {
      text.append(hours).append(NBSP).append(Wording.name(Unit.HOUR)).append(NBSP);
    }
    if (minutes > 0 || (hours == 0 && step >= 60)) {
      text.append(minutes).append(NBSP).append(Wording.name(Unit.MINUTE)).append(NBSP);
    }
    if (step < 60 && (secs > 0 || (hours == 0 && minutes == 0))) {
      text.append(secs).append(NBSP).append(Wording.name(Unit.SECOND));
    }
    return text.charAt(text.length() - 1) == NBSP
        ? text.substring(0, text.length() - 1)
        : text.toString();
  }
}
