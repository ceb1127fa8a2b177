package taperbook.metric.recording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.input.Given;
import taperbook.quantity.Interval;
import taperbook.result.Event;
import taperbook.result.Event.Kind;
import taperbook.session.Channel;
import taperbook.session.Session;

/** Which rows are an interruption, a blank display, or a note. */
final class EventFinderTest {
  private static final String HEAD = "elapsed [s],soc [%],power [kW],energy added [kWh],note\n";

  private static List<Event> of(String readings) {
    return EventFinder.of(session(readings));
  }

  private static List<Event> interruptions(String readings) {
    return EventFinder.interruptions(session(readings));
  }

  private static Session session(String readings) {
    return Given.goodSession(readings);
  }

  /** 60 kW is 1 kWh per minute, which is 2 %. */
  private static String row(int minute, int idleMinutes, String power, String note) {
    int charged = minute - idleMinutes;
    return 60 * minute + "," + (10 + 2 * charged) + "," + power + "," + charged + ".0," + note;
  }

  private static String rows(String... rows) {
    return HEAD + String.join("\n", rows) + "\n";
  }

  @Test
  void zeros_between_rows_with_power_are_an_interruption_even_with_a_small_standby_power() {
    List<Event> found =
        interruptions(
            rows(
                row(0, 0, "60", ""),
                row(1, 0, "60", ""),
                row(2, 0, "0", "lamp red"),
                row(4, 2, "0.5", "called the operator"),
                row(5, 3, "60", "goes on"),
                row(6, 3, "60", "")));
    assertThat(found).hasSize(1);
    assertThat(found.get(0).start()).isEqualTo(new Interval(60, 120));
    assertThat(found.get(0).end()).isEqualTo(new Interval(240, 300));
    assertThat(found.get(0).seconds()).isEqualTo(new Interval(120, 240));
    assertThat(found.get(0).note()).isEqualTo("lamp red; called the operator");
    assertThat(found.get(0).charge().orElseThrow().value()).isEqualTo(14);
  }

  @Test
  void idle_time_at_the_start_or_the_end_is_not_an_interruption() {
    assertThat(
            interruptions(
                rows(
                    row(0, 0, "0", "pause for the handshake"),
                    row(1, 1, "0", ""),
                    row(2, 2, "60", ""),
                    row(3, 2, "60", ""),
                    row(4, 2, "0", "full"),
                    row(5, 3, "0", "pause"))))
        .isEmpty();
  }

  @Test
  void zeros_while_the_charge_rises_are_not_an_interruption() {
    assertThat(
            interruptions(
                rows(
                    row(0, 0, "60", ""),
                    row(1, 0, "60", ""),
                    row(2, 0, "0", ""),
                    row(4, 0, "0", ""),
                    row(5, 0, "60", ""),
                    row(6, 0, "60", ""))))
        .isEmpty();
  }

  @Test
  void a_single_zero_is_an_interruption_only_if_energy_is_missing() {
    String[] slip = {
      row(0, 0, "60", ""), row(1, 0, "60", ""), row(2, 0, "0", ""), row(3, 0, "60", "")
    };
    assertThat(interruptions(rows(slip))).isEmpty();
    String[] true0 = {
      row(0, 0, "60", ""), row(1, 0, "60", ""), row(2, 1, "0", ""), row(3, 1, "60", "")
    };
    assertThat(interruptions(rows(true0)))
        .extracting(Event::seconds)
        .containsExactly(new Interval(0, 120));
  }

  @Test
  void without_power_an_unchanged_charge_is_an_interruption() {
    // 2 % per minute, then nine minutes at 20 %, then 2 % per minute again.
    String readings =
        "elapsed [s],soc [%]\n"
            + IntStream.range(0, 25)
                .mapToObj(
                    i -> 60 * i + "," + (i <= 5 ? 10 + 2 * i : i <= 14 ? 20 : 20 + 2 * (i - 14)))
                .collect(Collectors.joining("\n"))
            + "\n";
    List<Event> found = interruptions(readings);
    assertThat(found).hasSize(1);
    // A step lasts 30 s: the charge may have risen for that time at either end without a change of
    // the display.
    assertThat(found.get(0).start()).isEqualTo(new Interval(240, 330));
    assertThat(found.get(0).end()).isEqualTo(new Interval(810, 900));
  }

  @Test
  void a_slowing_taper_is_not_an_interruption() {
    // Each per cent takes a third longer than the previous one, with two readings in each.
    StringBuilder readings = new StringBuilder("elapsed [s],soc [%]\n");
    double second = 0;
    for (int percent = 60; percent < 80; percent++) {
      double lasts = 20 * Math.pow(4.0 / 3, percent - 60.0);
      readings.append(Math.round(second)).append(',').append(percent).append('\n');
      readings.append(Math.round(second + lasts * 0.9)).append(',').append(percent).append('\n');
      second += lasts;
    }
    assertThat(interruptions(readings.toString())).isEmpty();
  }

  @Test
  void repeated_values_of_a_coarse_counter_are_not_an_interruption() {
    String readings =
        "elapsed [s],energy added [kWh]\n"
            + IntStream.range(0, 1200)
                .mapToObj(s -> s + "," + s / 100)
                .collect(Collectors.joining("\n"))
            + "\n";
    assertThat(interruptions(readings)).isEmpty();
  }

  @Test
  void a_note_that_starts_with_pause_declares_an_interruption_without_power() {
    String readings =
        """
        elapsed [s],soc [%],note
        0,10,
        60,12,
        120,14,Pause: cable reseated
        180,14,pause
        240,14,pauses again
        300,16,
        360,18,
        """;
    List<Event> found = interruptions(readings);
    assertThat(found).extracting(Event::start).containsExactly(new Interval(60, 120));
    // A step lasts 30 s, so that the row at 240 s may show the same charge for 30 s already.
    assertThat(found).extracting(Event::end).containsExactly(new Interval(210, 240));
    assertThat(found.get(0).note()).isEqualTo("Pause: cable reseated; pause");
    assertThat(of(readings)).extracting(Event::note).last().isEqualTo("pauses again");
  }

  @Test
  void a_pause_noted_once_lasts_while_the_charge_is_constant() {
    String readings =
        """
        elapsed [s],soc [%],note
        0,10,
        60,12,
        120,14,pause: lamp red
        300,14,
        480,14,
        540,16,
        600,18,
        """;
    List<Event> found = interruptions(readings);
    assertThat(found).extracting(Event::start).containsExactly(new Interval(60, 120));
    assertThat(found).extracting(Event::end).containsExactly(new Interval(450, 540));
  }

  @Test
  void a_pause_next_to_power_is_reported_and_ignored() {
    String readings =
        rows(
            row(0, 0, "60", ""),
            row(1, 0, "60", "pause for a coffee"),
            row(2, 0, "60", ""),
            row(3, 0, "60", ""));
    Session session = Given.session(readings, Given.CONDITIONS).value().orElseThrow();
    assertThat(EventFinder.interruptions(session)).isEmpty();
    assertThat(EventFinder.of(session)).extracting(Event::kind).containsExactly(Kind.NOTE);
  }

  @Test
  void a_blank_display_is_an_event_with_its_note() {
    StringBuilder readings = new StringBuilder(HEAD);
    for (int minute = 0; minute <= 12; minute++) {
      boolean dark = minute == 6 || minute == 7;
      readings.append(row(minute, 0, dark ? "" : "60", minute == 6 ? "screen dark" : ""));
      readings.append('\n');
    }
    List<Event> found = of(readings.toString());
    assertThat(found).extracting(Event::kind).containsExactly(Kind.NOT_READ);
    assertThat(found.get(0).channel()).contains(Channel.POWER);
    assertThat(found.get(0).start()).isEqualTo(Interval.exactly(300));
    assertThat(found.get(0).end()).isEqualTo(Interval.exactly(480));
    assertThat(of(readings.toString().replace("screen dark", ""))).isEmpty();
  }

  @Test
  void a_repeated_note_is_one_event() {
    assertThat(
            of(
                rows(
                    row(0, 0, "60", "raining"),
                    row(1, 0, "60", "raining"),
                    row(2, 0, "60", "dry"),
                    row(3, 0, "60", "raining"))))
        .extracting(Event::note)
        .containsExactly("raining", "dry", "raining");
  }
}
