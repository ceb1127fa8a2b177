package taperbook.metric.quality;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import taperbook.i18n.Texts;
import taperbook.quantity.Interval;
import taperbook.session.Trace;

/**
 * Explains a reading by a transcription error: the one change of its digits that makes it fit. If
 * several kinds of change do, none is reported.
 */
final class TranscriptionSlip {
  /** Digits that look alike on a seven-segment display or in handwriting: common practice. */
  private static final Map<Character, String> ALIKE =
      Map.of(
          '0', "868", '1', "74", '2', "37", '3', "825", '4', "91", '5', "63", '6', "580", '7', "12",
          '8', "3069", '9', "48");

  private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9]\\d*)(\\.\\d+)?");

  private TranscriptionSlip() {}

  /** Returns the probable original reading and the error, such as {@code 26: digits swapped?}. */
  static Optional<String> explaining(Trace trace, int i, Interval fitting) {
    int places = places(2 * trace.halfStep());
    String text = text(trace.value(i), places);
    if (i > 0 && trace.value(i) == trace.value(i - 1)) {
      return Optional.of(Texts.of("metric.transcription_slip.reading_of_row_before_once"));
    }
    Map<String, String> texts = new LinkedHashMap<>();
    for (int at = 0; at < text.length(); at++) {
      tryAt(text, at, fitting, texts);
    }
    attempt(texts, "sign", text.startsWith("-") ? text.substring(1) : "-" + text, fitting);
    attempt(
        texts,
        Texts.of("metric.transcription_slip.decimal_point"),
        text(trace.value(i) * 10, places),
        fitting);
    attempt(
        texts,
        Texts.of("metric.transcription_slip.decimal_point"),
        text(trace.value(i) / 10, places + 1),
        fitting);
    return texts.size() == 1
        ? texts.entrySet().stream().map(e -> e.getKey() + ": " + e.getValue() + "?").findFirst()
        : Optional.empty();
  }

  private static void tryAt(String text, int at, Interval fitting, Map<String, String> texts) {
    char c = text.charAt(at);
    if (!Character.isDigit(c)) {
      return;
    }
    String head = text.substring(0, at);
    String tail = text.substring(at + 1);
    if (!tail.isEmpty() && Character.isDigit(tail.charAt(0)) && tail.charAt(0) != c) {
      attempt(
          texts,
          Texts.of("metric.transcription_slip.digits_swapped"),
          head + tail.charAt(0) + c + tail.substring(1),
          fitting);
    }
    for (char other : ALIKE.getOrDefault(c, "").toCharArray()) {
      attempt(
          texts, Texts.of("metric.transcription_slip.digit_misread"), head + other + tail, fitting);
    }
    if (c < '9') {
      attempt(
          texts,
          Texts.of("metric.transcription_slip.digit_off_by_one"),
          head + (char) (c + 1) + tail,
          fitting);
    }
    if (c > '0') {
      attempt(
          texts,
          Texts.of("metric.transcription_slip.digit_off_by_one"),
          head + (char) (c - 1) + tail,
          fitting);
    }
    if (text.length() > 1) {
      attempt(texts, Texts.of("metric.transcription_slip.digit_too_many"), head + tail, fitting);
    }
    for (char more = '0'; more <= '9'; more++) {
      attempt(
          texts,
          Texts.of("metric.transcription_slip.digit_left_out"),
          head + more + c + tail,
          fitting);
      attempt(
          texts,
          Texts.of("metric.transcription_slip.digit_left_out"),
          head + c + more + tail,
          fitting);
    }
  }

  /** Records a reading that would fit, under the first kind of error that produces it. */
  private static void attempt(
      Map<String, String> texts, String kind, String text, Interval fitting) {
    if (NUMBER.matcher(text).matches() && fitting.contains(Double.parseDouble(text))) {
      texts.putIfAbsent(text, kind);
    }
  }

  /** Explains the time of a row, s, as {@link #explaining} does a reading. */
  static Optional<String> explainingTime(double second, Interval times) {
    List<Double> minutes =
        List.of(-600.0, -60.0, 60.0, 600.0).stream()
            .filter(d -> times.contains(second + d))
            .toList();
    return minutes.size() == 1
        ? Optional.of(
            Texts.of(
                "metric.transcription_slip.off",
                clock(second + minutes.get(0)),
                Math.abs(minutes.get(0)) > 60
                    ? Texts.of("metric.transcription_slip.ten_minutes")
                    : Texts.of("metric.transcription_slip.a_minute")))
        : Optional.empty();
  }

  static String clock(double second) {
    long whole = Math.round(second);
    return String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60);
  }

  private static int places(double step) {
    int places = 0;
    double scaled = step;
    while (step > 0 && places < 6 && Math.abs(scaled - Math.rint(scaled)) > 1e-6) {
      scaled *= 10;
      places++;
    }
    return places;
  }

  private static String text(double value, int places) {
    return String.format(Locale.ROOT, "%." + places + "f", value);
  }
}
