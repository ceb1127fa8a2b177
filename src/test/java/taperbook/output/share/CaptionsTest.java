package taperbook.output.share;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import taperbook.quantity.Interval;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.Facts;
import taperbook.session.Samples;
import taperbook.session.Session;
import taperbook.session.Trace;

final class CaptionsTest {
  private final Map<Channel, Samples> read = new EnumMap<>(Channel.class);

  @Test
  void each_caption_lasts_until_the_next_one_or_for_five_seconds() {
    written(Channel.SOC, 0, 9, 0);
    written(Channel.POWER, 0, 93.4, 1);
    written(Channel.ENERGY_ADDED, 0, 0, 1);
    written(Channel.POWER, 3, 120, 0);
    written(Channel.SOC, 62, 10, 0);
    written(Channel.SOC, 3_600, 11, 0);

    assertThat(new String(captions(OptionalInt.of(200)).srt(), UTF_8).replace('\u00a0', ' '))
        .isEqualTo(
            """
            1
            00:03:20,000 --> 00:03:23,000
            0:00 · 9 % · 93.4 kW · 0.0 kWh

            2
            00:03:23,000 --> 00:03:28,000
            0:03 · 120 kW

            3
            00:04:22,000 --> 00:04:27,000
            1:02 · 10 %

            4
            01:03:20,000 --> 01:03:25,000
            1:00:00 · 11 %

            """
                .replace("\n", "\r\n"));
  }

  @Test
  void webvtt_states_the_offset_or_its_absence() {
    written(Channel.POWER, 1.25, 50, 0);

    // Signature, comment, and cue by the W3C's WebVTT, section 4.1.
    assertThat(new String(captions(OptionalInt.empty()).vtt(), UTF_8).replace('\u00a0', ' '))
        .isEqualTo(
            """
            WEBVTT

            NOTE
            What the displays showed, as written down: elapsed time, state of charge, power, energy added.
            The report states no offset of the film, so these times are elapsed times.

            00:00:01.250 --> 00:00:06.250
            0:01 · 50 kW
            """);
    assertThat(new String(captions(OptionalInt.of(3_661)).vtt(), UTF_8))
        .contains("\nElapsed time 0:00 is 1:01:01 of the film.\n\n01:01:02.250 --> ");
  }

  @Test
  void computed_values_and_unreadable_captions_are_omitted() {
    samples(Channel.ENERGY_ADDED).add(0, 12.3, 2);
    written(Channel.POWER, 10, 50, 0);
    samples(Channel.ENERGY_ADDED).add(10, 13.4, 3);
    written(Channel.POWER, 10.5, 51, 0);
    written(Channel.POWER, 11, 52, 0);

    assertThat(captions(OptionalInt.empty()).all())
        .extracting(c -> c.from() + " " + c.to() + " " + c.text().replace('\u00a0', ' '))
        .containsExactly("10000 11000 0:10 · 50 kW", "11000 16000 0:11 · 52 kW");
  }

  @Test
  void a_continued_counter_shows_only_displayed_values() {
    written(Channel.ENERGY_ADDED, 0, 4, 0);
    written(Channel.ENERGY_ADDED, 10, 1, 0);
    samples(Channel.ENERGY_ADDED).show(new double[] {4, 5});

    assertThat(captions(OptionalInt.empty()).all())
        .singleElement()
        .satisfies(c -> assertThat(c.text()).isEqualTo("0:00 · 4\u00a0kWh"));
  }

  private Samples samples(Channel channel) {
    return read.computeIfAbsent(channel, c -> new Samples(4));
  }

  private void written(Channel channel, double second, double value, int places) {
    samples(channel).addWritten(second, value, 2, places);
  }

  private Captions captions(OptionalInt offset) {
    Map<Channel, Trace> traces = new EnumMap<>(Channel.class);
    read.forEach(
        (channel, samples) -> traces.put(channel, new Trace("readings.csv", samples, 0.5, 0)));
    Session session =
        new Session(
            "one",
            new Facts<>("conditions.csv", ConditionItem.class, Map.of()),
            traces,
            List.of(),
            new Interval(0, 3_600));
    return new Captions(session, offset);
  }
}
