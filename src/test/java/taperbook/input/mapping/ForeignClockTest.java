package taperbook.input.mapping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.diagnostics.Checked;
import taperbook.input.Given;
import taperbook.session.Caveat;
import taperbook.session.Session;

/**
 * Clocks of foreign files. Summer time in the European Union starts on the last Sunday of March and
 * ends on the last Sunday of October, at 01:00 UTC (directive 2000/84/EC, articles 2 and 3): in
 * 2026 on 29 March and 25 October, when clocks in Berlin change from 02:00 to 03:00 and from 03:00
 * to 02:00.
 */
final class ForeignClockTest {
  @ParameterizedTest
  @CsvSource({
    "'',2026-03-14T10:02:05+01:00,2026-03-14T09:03:05.5Z,60.5",
    "ISO 8601,2026-03-14 10:02,2026-03-14 11:02,3600",
    "epoch s,1773478925,1773478985,60",
    "epoch ms,1773478925000,1773478925500,0.5",
    "dd.MM.yyyy HH:mm:ss,31.12.2026 23:59:30,01.01.2027 00:00:30,60",
    "d.M.yyyy H:mm,1.2.2026 9:59,1.2.2026 10:01,120",
    "MM/dd/yyyy hh:mm:ss a,03/14/2026 12:59:59 am,03/14/2026 01:00:00 AM,1",
    "yy-MM-ddTHH:mm:ss.SSS,26-03-14T10:00:00.000,26-03-14T10:00:00.250,0.25",
    "yyyy-MM-dd HH:mm:ssXXX,2026-03-14 10:00:00+01:00,2026-03-14 10:00:00Z,3600",
    "HH:mm:ss,10:00:00,10:00:30,30"
  })
  void supported_formats_are_parsed(String format, String first, String second, double seconds) {
    assertThat(elapsed("clock,t,,,," + format + "\nsoc,s,%\n", first, second)).isEqualTo(seconds);
  }

  @Test
  void date_and_time_may_be_in_two_columns() {
    Session session =
        Given.good(
            Foreign.session(
                "date,d,,,,dd.MM.yyyy\nclock,t,,,,HH:mm\nsoc,s,%\n",
                "d,s,t\n28.02.2026,10,23:59\n01.03.2026,11,00:01\n"));
    assertThat(session.recorded().high()).isEqualTo(120);
  }

  @Test
  void a_stated_zone_resolves_both_changes_of_daylight_saving() {
    String rows = "time zone,Europe/Berlin\nclock,t\nsoc,s,%\n";
    assertThat(elapsed(rows, "2026-03-29T01:59:30", "2026-03-29T03:00:00")).isEqualTo(30);
    assertThat(elapsed(rows, "2026-10-25T02:59:30", "2026-10-25T02:00:00")).isEqualTo(30);
    assertThat(elapsed(rows, "2026-10-25T01:00:00", "2026-10-25T03:00:00")).isEqualTo(10800);
    assertThat(elapsed(rows, "2026-03-28T01:59:30", "2026-03-28T03:00:00")).isEqualTo(3630);
  }

  @Test
  void a_time_in_the_skipped_hour_is_refused() {
    assertThat(
            Foreign.problems(
                "time zone,Europe/Berlin\nclock,t\nsoc,s,%\n",
                "t,s\n2026-03-29T01:59:30,10\n2026-03-29T02:00:00,11\n"))
        .containsExactly(
            "r.csv:3:1: found \"2026-03-29T02:00:00\"; expected a time that clocks in Europe/Berlin"
                + " showed; they skipped this one. To fix: correct the time zone in columns.csv, or"
                + " the time. [cell-not-a-time]");
  }

  @Test
  void a_zone_requires_a_date() {
    assertThat(
            Foreign.problems(
                "time zone,Europe/Berlin\nclock,t\nsoc,s,%\n", "t,s\n10:00,10\n10:01,11\n"))
        .first()
        .isEqualTo(
            "r.csv:2:1: found \"10:00\"; expected a date with the time, as columns.csv states a"
                + " time zone. To fix: map a column for the date, or remove the time zone."
                + " [cell-not-a-time]");
    assertThat(
            Foreign.problems(
                "time zone,Europe/Berlin\nclock,t,,,,HH:mm\nsoc,s,%\n",
                "t,s\n10:00,10\n10:01,11\n"))
        .containsExactly(
            "columns.csv:3:6: found \"HH:mm\"; expected a date with the time, as a time zone is"
                + " stated. To fix: add the row for date, or remove the row for the time zone."
                + " [value-not-understood]");
  }

  @Test
  void midnight_is_unwrapped_with_a_notice() {
    Checked<Session> checked =
        Foreign.session("clock,t\nsoc,s,%\n", "t,s\n23:59:50,10\n00:00:10,11\n00:00:30,12\n");
    assertThat(checked.value().orElseThrow().recorded().high()).isEqualTo(40);
    assertThat(Given.sentences(checked))
        .containsExactly(
            "r.csv:3:1: found \"00:00:10\" after \"23:59:50\"; expected a time of day that rises;"
                + " this one is taken for the next day. To fix: leave it, if the session went past"
                + " midnight. [clock-past-midnight]");
  }

  @Test
  void without_a_zone_the_end_of_daylight_saving_is_refused_by_name() {
    assertThat(
            Given.problems(
                "clock [ISO 8601],soc [%]\n2026-10-25T02:59:30,10\n2026-10-25T02:00:00,11\n"))
        .containsExactly(
            "r.csv:3:1: found \"2026-10-25T02:00:00\" after \"2026-10-25T02:59:30\" on line 2;"
                + " expected a time that is not before the one above; clocks go back an hour where"
                + " daylight saving ends. To fix: state the time zone in columns.csv, or write"
                + " times with their offset from UTC. [time-goes-back]");
  }

  @Test
  void without_a_zone_the_start_of_daylight_saving_is_reported_and_adds_a_caveat() {
    Checked<Session> checked =
        Given.session(
            """
            clock [ISO 8601],soc [%]
            2026-03-29T01:58:30,10
            2026-03-29T01:59:00,11
            2026-03-29T01:59:30,12
            2026-03-29T03:00:00,13
            2026-03-29T03:00:30,14
            """,
            Given.CONDITIONS);
    assertThat(Given.sentences(checked))
        .containsExactly(
            "r.csv:5:1: found a time 3630 s after the one above; expected no jump; clocks go forth"
                + " an hour where daylight saving begins. To fix: state the time zone in"
                + " columns.csv, or write times with their offset from UTC. [clock-jumps]");
    assertThat(checked.value().orElseThrow().caveats())
        .extracting(Caveat::kind, Caveat::sentence)
        .containsExactly(
            tuple(
                Caveat.Kind.CLOCK,
                "The clock jumps by an hour at r.csv:5, as where daylight saving begins. If it"
                    + " does, all times across it are an hour too long."));
  }

  private static double elapsed(String rows, String first, String second) {
    return Given.good(Foreign.session(rows, "t,s\n" + first + ",10\n" + second + ",11\n"))
        .recorded()
        .high();
  }
}
