package taperbook.output.share;

import java.util.Locale;

/** Time codes of a session: 0:00 is plugging in. */
final class TimeCode {
  private TimeCode() {}

  /** Formats the nearest whole second as {@code m:ss}, or from an hour as {@code h:mm:ss}. */
  static String of(double seconds) {
    long whole = Math.round(seconds);
    long hours = whole / 3600;
    long minutes = whole % 3600 / 60;
    return hours == 0
        ? String.format(Locale.ROOT, "%d:%02d", minutes, whole % 60)
        : String.format(Locale.ROOT, "%d:%02d:%02d", hours, minutes, whole % 60);
  }
}
