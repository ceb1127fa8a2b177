package taperbook.output.share;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.quantity.Unit;
import taperbook.result.ReportResult;
import taperbook.session.Channel;
import taperbook.session.Session;
import taperbook.session.Trace;

/**
 * Creates captions for a film of a session: the displayed values, reading by reading, as recorded.
 * Computes nothing; omits readings that the program or {@code columns.csv} changed.
 *
 * @see <a href="https://www.w3.org/TR/webvtt1/">WebVTT: The Web Video Text Tracks Format</a>
 */
public final class Captions {
  /** Maximum display time of a caption that nothing replaces, ms; common practice, no source. */
  private static final long MOST_MILLIS = 5_000;

  /** Minimum display time of a readable caption, ms; common practice, no source. */
  private static final long LEAST_MILLIS = 1_000;

  private static final List<Channel> SHOWN =
      List.of(Channel.SOC, Channel.POWER, Channel.ENERGY_ADDED);

  /**
   * A caption.
   *
   * @param from film time at which it appears, ms
   * @param to film time at which it disappears, ms, above {@code from}
   */
  record Caption(long from, long to, String text) {}

  private final List<Caption> captions;
  private final OptionalInt offset;

  /** Creates the captions of the reported session. */
  public Captions(ReportResult result) {
    this(result.main().session(), result.plan().style().film().offsetSeconds());
  }

  /**
   * Creates the captions of a session.
   *
   * @param offset film time at which elapsed time is 0, s; if absent, the film starts then
   */
  Captions(Session session, OptionalInt offset) {
    this.offset = offset;
    this.captions = captions(session, 1000L * offset.orElse(0));
  }

  /** Returns the captions in order of film time, without overlap. */
  List<Caption> all() {
    return captions;
  }

  /** Returns true if no display was read. */
  public boolean isEmpty() {
    return captions.isEmpty();
  }

  /** Returns SubRip text as UTF-8. */
  public byte[] srt() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < captions.size(); i++) {
      text.append(i + 1).append("\r\n");
      text.append(times(captions.get(i), ',')).append("\r\n");
      text.append(captions.get(i).text()).append("\r\n\r\n");
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** Returns WebVTT as UTF-8. */
  public byte[] vtt() {
    StringBuilder text = new StringBuilder("WEBVTT\n\nNOTE\n");
    text.append(Texts.of("page.captions.what_displays_showed_as_written"))
        .append(Texts.of("page.captions.energy_added"));
    if (offset.isPresent()) {
      text.append(Texts.of("page.captions.elapsed_time_0_00_is"))
          .append(NumberFormatter.timeCode(offset.getAsInt()))
          .append(Texts.of("page.captions.of_film"));
    } else {
      text.append(Texts.of("page.captions.report_states_no_offset_of"));
    }
    for (Caption caption : captions) {
      text.append('\n').append(times(caption, '.')).append('\n');
      text.append(caption.text()).append('\n');
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static List<Caption> captions(Session session, long offsetMillis) {
    List<Caption> all = new ArrayList<>();
    session.rowTimes().stream()
        .forEach(
            second -> {
              long from = offsetMillis + Math.round(1000 * second);
              boolean legible =
                  all.isEmpty() || from - all.get(all.size() - 1).from() >= LEAST_MILLIS;
              if (from >= 0 && legible) {
                text(session, second).ifPresent(text -> add(all, from, text));
              }
            });
    return List.copyOf(all);
  }

  private static void add(List<Caption> all, long from, String text) {
    int last = all.size() - 1;
    if (last >= 0 && all.get(last).to() > from) {
      all.set(last, new Caption(all.get(last).from(), from, all.get(last).text()));
    }
    all.add(new Caption(from, from + MOST_MILLIS, text));
  }

  /**
   * Returns the elapsed time in whole seconds, as a clock shows it, and the readings at that time.
   */
  private static Optional<String> text(Session session, double second) {
    List<String> readings =
        SHOWN.stream()
            .flatMap(
                channel -> session.trace(channel).stream().flatMap(t -> at(channel, t, second)))
            .toList();
    return readings.isEmpty()
        ? Optional.empty()
        : Optional.of(
            NumberFormatter.timeCode(Math.floor(second)) + " · " + String.join(" · ", readings));
  }

  private static Stream<String> at(Channel channel, Trace trace, double second) {
    int i = trace.indexAtOrBefore(second);
    if (i < 0 || trace.second(i) != second || trace.places(i).isEmpty()) {
      return Stream.empty();
    }
    Unit unit = Unit.base(channel.quantity());
    return Stream.of(NumberFormatter.written(trace.value(i), trace.places(i).getAsInt(), unit));
  }

  private static String times(Caption caption, char mark) {
    return time(caption.from(), mark) + " --> " + time(caption.to(), mark);
  }

  private static String time(long millis, char mark) {
    long seconds = millis / 1000;
    return String.format(
        Locale.ROOT,
        "%02d:%02d:%02d%c%03d",
        seconds / 3600,
        seconds / 60 % 60,
        seconds % 60,
        mark,
        millis % 1000);
  }
}
