package taperbook.format;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import taperbook.i18n.Texts;

/**
 * Formats amounts in spoken form: minutes in halves up to ten, then whole ones; other amounts with
 * at most three digits.
 */
final class SpokenFormat {
  private static final int MINUTE = 60;
  private static final int HOUR = 3600;

  /** Times up to this are spoken in seconds, longer ones in minutes. */
  private static final double LONGEST_IN_SECONDS = 57.5;

  /** Times up to this have fractions of minutes. */
  private static final int LONGEST_WITH_FRACTIONS = 10 * MINUTE;

  /** A fraction of a minute with a larger relative error than this is replaced by a finer one. */
  private static final double COARSEST = 0.04;

  private static final String[] QUARTERS = {"", "\u00bc", "\u00bd", "\u00be"};
  private static final MathContext THREE_DIGITS = new MathContext(3, RoundingMode.HALF_EVEN);

  private SpokenFormat() {}

  /** Returns a time in s in spoken form, such as {@code 6½ minutes}. */
  static String time(double seconds) {
    String sign = seconds < 0 ? "\u2212" : "";
    double length = Math.abs(seconds);
    if (length < LONGEST_IN_SECONDS) {
      return sign + seconds(Math.round(length / 5) * 5);
    }
    if (length >= HOUR - MINUTE / 2.0) {
      return sign + hours(Math.round(length / (5 * MINUTE)) * 5);
    }
    if (length > LONGEST_WITH_FRACTIONS - MINUTE / 4.0) {
      return sign + minutes(4 * Math.round(length / MINUTE));
    }
    long quarters = Math.round(length / (MINUTE / 2.0)) * 2;
    if (Math.abs(quarters * MINUTE / 4.0 - length) > COARSEST * length) {
      quarters = Math.round(length / (MINUTE / 4.0));
    }
    return sign + minutes(quarters);
  }

  private static String minutes(long quarters) {
    long whole = quarters / 4;
    String fraction = QUARTERS[(int) (quarters % 4)];
    if (fraction.isEmpty()) {
      return Texts.count(whole, "spoken.minute", "spoken.minutes");
    }
    return Texts.of("spoken.minutes", (whole == 0 ? "" : String.valueOf(whole)) + fraction);
  }

  private static String hours(long minutes) {
    long whole = minutes / MINUTE;
    String hours = Texts.count(whole, "spoken.hour", "spoken.hours");
    return minutes % MINUTE == 0 ? hours : hours + " " + minutes(4 * (minutes % MINUTE));
  }

  private static String seconds(long seconds) {
    return Texts.of("spoken.seconds", seconds);
  }

  /** Returns an amount in spoken form, without its unit. */
  static String amount(double amount) {
    BigDecimal rounded = new BigDecimal(amount).round(THREE_DIGITS);
    BigDecimal shown =
        Math.abs(amount) >= 10 ? rounded.setScale(0, RoundingMode.HALF_EVEN) : rounded;
    return shown.stripTrailingZeros().toPlainString().replace("-", "\u2212");
  }
}
