package taperbook.metric.quality;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import taperbook.quantity.Interval;
import taperbook.session.Channel;
import taperbook.session.Session;
import taperbook.session.Trace;

/** Transcription slips, each in one reading of a session without any. */
public final class TranscriptionSlips {
  public enum Kind {
    SWAPPED_DIGITS,
    MISREAD_DIGIT,
    DIGIT_LOST,
    DIGIT_TWICE,
    TENS_OFF_BY_ONE,
    DECIMAL_POINT,
    SIGN,
    ROW_BEFORE,
    NEIGHBOURS_EXCHANGED,
    CHANNELS_EXCHANGED,
    COLUMN_SLIPPED,
    MINUTE_OFF
  }

  /**
   * A session with a slip.
   *
   * @param kind the kind of slip
   * @param session the session
   * @param channel the channel concerned; none if it is the row's time
   * @param lines the lines of the cells that are wrong
   */
  public record Slip(Kind kind, Session session, Optional<Channel> channel, List<Integer> lines) {}

  private static final String[] LOOK_ALIKE = {"8", "7", "7", "8", "9", "6", "5", "1", "3", "4"};

  private TranscriptionSlips() {}

  /** One slip of a kind; empty if the session has no suitable cell. */
  public static Optional<Slip> of(Kind kind, Session session, Random random) {
    for (int tries = 0; tries < 40; tries++) {
      List<Channel> channels = List.copyOf(session.traces().keySet());
      Channel channel = channels.get(random.nextInt(channels.size()));
      Trace trace = session.trace(channel).orElseThrow();
      int i = random.nextInt(trace.size());
      Optional<Slip> slip =
          switch (kind) {
            case COLUMN_SLIPPED -> slipped(session, channel, trace, random);
            case MINUTE_OFF -> minuteOff(session, trace, i, random);
            case CHANNELS_EXCHANGED -> exchanged(session, trace, i);
            case NEIGHBOURS_EXCHANGED -> neighbours(session, channel, trace, i);
            default -> cell(kind, session, channel, trace, i, random);
          };
      if (slip.isPresent()) {
        return slip;
      }
    }
    return Optional.empty();
  }

  private static Optional<Slip> cell(
      Kind kind, Session session, Channel channel, Trace trace, int i, Random random) {
    double step = 2 * trace.halfStep();
    int places = step >= 1 ? 0 : step >= 0.1 ? 1 : 2;
    String text = String.format(java.util.Locale.ROOT, "%." + places + "f", trace.value(i));
    String wrong = written(kind, text, trace, i, places, random);
    double value = wrong.isEmpty() ? Double.NaN : Double.parseDouble(wrong);
    boolean possible =
        !Double.isNaN(value)
            && value != trace.value(i)
            && (channel != Channel.SOC || (value >= 0 && value <= 100))
            && Math.abs(value) < 4000;
    if (!possible) {
      return Optional.empty();
    }
    double[] values = trace.values();
    values[i] = value;
    return Optional.of(
        new Slip(
            kind,
            with(session, channel, trace.seconds(), values),
            Optional.of(channel),
            List.of(trace.row(i).line())));
  }

  private static String written(
      Kind kind, String text, Trace trace, int i, int places, Random random) {
    int at = random.nextInt(text.length());
    char c = text.charAt(at);
    if (kind == Kind.ROW_BEFORE) {
      return i == 0
          ? ""
          : String.format(java.util.Locale.ROOT, "%." + places + "f", trace.value(i - 1));
    }
    if (kind == Kind.SIGN) {
      return "-" + text;
    }
    if (kind == Kind.DECIMAL_POINT) {
      double tenfold = random.nextBoolean() ? 10 : 0.1;
      double moved = Double.parseDouble(text) * tenfold;
      return places == 0 && tenfold < 1
          ? ""
          : String.format(java.util.Locale.ROOT, "%." + places + "f", moved);
    }
    if (c == '.') {
      return "";
    }
    return switch (kind) {
      case SWAPPED_DIGITS ->
          at + 1 < text.length() && text.charAt(at + 1) != '.'
              ? text.substring(0, at) + text.charAt(at + 1) + c + text.substring(at + 2)
              : "";
      case MISREAD_DIGIT -> text.substring(0, at) + LOOK_ALIKE[c - '0'] + text.substring(at + 1);
      case DIGIT_LOST -> {
        String shorter = text.substring(0, at) + text.substring(at + 1);
        yield shorter.isEmpty() || shorter.startsWith(".") || shorter.endsWith(".") ? "" : shorter;
      }
      case DIGIT_TWICE -> text.substring(0, at) + c + text.substring(at);
      default -> {
        int tens = text.indexOf('.') < 0 ? text.length() - 2 : text.indexOf('.') - 2;
        if (tens < 0) {
          yield "";
        }
        int digit = text.charAt(tens) - '0' + (random.nextBoolean() ? 1 : -1);
        yield digit < 0 || digit > 9
            ? ""
            : text.substring(0, tens) + digit + text.substring(tens + 1);
      }
    };
  }

  private static Optional<Slip> neighbours(Session session, Channel channel, Trace trace, int i) {
    double[] values = trace.values();
    if (i == 0 || values[i] == values[i - 1]) {
      return Optional.empty();
    }
    double kept = values[i];
    values[i] = values[i - 1];
    values[i - 1] = kept;
    return Optional.of(
        new Slip(
            Kind.NEIGHBOURS_EXCHANGED,
            with(session, channel, trace.seconds(), values),
            Optional.of(channel),
            List.of(trace.row(i - 1).line(), trace.row(i).line())));
  }

  private static Optional<Slip> exchanged(Session session, Trace trace, int i) {
    Trace soc = session.trace(Channel.SOC).orElse(trace);
    Trace power = session.trace(Channel.POWER).orElse(trace);
    double second = trace.second(i);
    int a = soc.indexAtOrBefore(second);
    int b = power.indexAtOrBefore(second);
    if (a < 0
        || b < 0
        || soc.second(a) != power.second(b)
        || power.value(b) > 100
        || soc.value(a) == power.value(b)) {
      return Optional.empty();
    }
    double[] charges = soc.values();
    double[] powers = power.values();
    double kept = charges[a];
    charges[a] = powers[b];
    powers[b] = kept;
    Session one = with(session, Channel.SOC, soc.seconds(), charges);
    return Optional.of(
        new Slip(
            Kind.CHANNELS_EXCHANGED,
            with(one, Channel.POWER, power.seconds(), powers),
            Optional.of(Channel.SOC),
            List.of(soc.row(a).line())));
  }

  private static Optional<Slip> slipped(
      Session session, Channel channel, Trace trace, Random random) {
    int n = trace.size();
    if (n < 8) {
      return Optional.empty();
    }
    int from = 1 + random.nextInt(n - 5);
    double[] values = trace.values();
    List<Integer> lines = new ArrayList<>();
    for (int i = n - 1; i > from; i--) {
      values[i] = values[i - 1];
      lines.add(trace.row(i).line());
    }
    return Optional.of(
        new Slip(
            Kind.COLUMN_SLIPPED,
            with(session, channel, trace.seconds(), values),
            Optional.of(channel),
            lines));
  }

  private static Optional<Slip> minuteOff(Session session, Trace trace, int i, Random random) {
    double second = trace.second(i);
    double wrong = second + (random.nextBoolean() ? 60 : -60);
    Session changed = session;
    for (Channel channel : session.traces().keySet()) {
      Trace other = session.trace(channel).orElseThrow();
      double[] seconds = other.seconds();
      for (int k = 0; k < seconds.length; k++) {
        if (seconds[k] == second) {
          if ((k > 0 && seconds[k - 1] >= wrong)
              || (k + 1 < seconds.length && seconds[k + 1] <= wrong)
              || wrong < 0
              || k == 0) {
            return Optional.empty();
          }
          seconds[k] = wrong;
        }
      }
      changed = with(changed, channel, seconds, other.values());
    }
    return Optional.of(
        new Slip(Kind.MINUTE_OFF, changed, Optional.empty(), List.of(trace.row(i).line())));
  }

  /** Replaces the readings of a channel. */
  static Session with(Session session, Channel channel, double[] seconds, double[] values) {
    Trace old = session.trace(channel).orElseThrow();
    int[] lines = new int[old.size()];
    for (int i = 0; i < lines.length; i++) {
      lines[i] = old.row(i).line();
    }
    Map<Channel, Trace> traces = new EnumMap<>(session.traces());
    traces.put(
        channel,
        new Trace(old.row(0).file(), seconds, values, lines, old.halfStep(), old.clockHalfStep()));
    return new Session(
        session.name(),
        session.conditions(),
        traces,
        session.notes(),
        new Interval(
            traces.values().stream().mapToDouble(Trace::firstSecond).min().orElseThrow(),
            traces.values().stream().mapToDouble(Trace::lastSecond).max().orElseThrow()),
        session.caveats(),
        session.review());
  }
}
