package taperbook.format;

import taperbook.quantity.Interval;
import taperbook.quantity.Unit;

/**
 * Formats times: {@code 24 min 40 s}, {@code 1 h 5 min}. No-break spaces keep a time on one line.
 */
final class DurationFormat {
  private static final char NBSP = '\u00a0';

  private DurationFormat() {}

  /**
   * Returns the rounding step in seconds for a time with the given interval: at most two
   * significant digits of its half-width, and never finer than one second for times over a minute.
   */
  static int step(Interval bounds) {
    return step(bounds.width() / 2);
  }

  /** Returns the step in seconds for a half-width in seconds. */
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
    return words(roundedDown(seconds, step), step);
  }

  static String up(double seconds, int step) {
    return words(roundedUp(seconds, step), step);
  }

  static long roundedDown(double seconds, int step) {
    return (long) Math.floor(seconds / step + 1e-6) * step;
  }

  static long roundedUp(double seconds, int step) {
    return (long) Math.ceil(seconds / step - 1e-6) * step;
  }

  /**
   * Formats a time as on a clock: {@code 6:29}, {@code 1:05:00}, or {@code 8:21} in whole minutes.
   */
  static String clock(long seconds, ClockForm form) {
    long rest = Math.abs(seconds);
    String sign = seconds < 0 ? "\u2212" : "";
    return sign
        + switch (form) {
          case MINUTES -> rest / 60 + ":" + two(rest % 60);
          case HOURS -> rest / 3600 + ":" + two(rest % 3600 / 60) + ":" + two(rest % 60);
          case WHOLE_MINUTES -> rest / 3600 + ":" + two(rest % 3600 / 60);
        };
  }

  /** Formats a time as on a clock, with hours if it has any. */
  static String clock(double seconds) {
    long whole = Math.round(seconds);
    return clock(whole, whole < 3600 ? ClockForm.MINUTES : ClockForm.HOURS);
  }

  private static String two(long number) {
    return (number < 10 ? "0" : "") + number;
  }

  /** The parts of a time that a column of clock times shows. */
  enum ClockForm {
    /** Minutes and seconds. */
    MINUTES,
    /** Hours, minutes and seconds. */
    HOURS,
    /** Hours and minutes. */
    WHOLE_MINUTES
  }

  private static String words(long seconds, int step) {
    String sign = seconds < 0 ? "\u2212" : "";
    long rest = Math.abs(seconds);
    long hours = rest / 3600;
    long minutes = rest % 3600 / 60;
    long secs = rest % 60;
    StringBuilder text = new StringBuilder(sign);
    if (hours > 0) {
      text.append(hours).append(NBSP).append(NumberFormatter.name(Unit.HOUR)).append(NBSP);
    }
    if (minutes > 0 || (hours == 0 && step >= 60)) {
      text.append(minutes).append(NBSP).append(NumberFormatter.name(Unit.MINUTE)).append(NBSP);
    }
    if (step < 60 && (secs > 0 || (hours == 0 && minutes == 0))) {
      text.append(secs).append(NBSP).append(NumberFormatter.name(Unit.SECOND));
    }
    return text.charAt(text.length() - 1) == NBSP
        ? text.substring(0, text.length() - 1)
        : text.toString();
  }
}
