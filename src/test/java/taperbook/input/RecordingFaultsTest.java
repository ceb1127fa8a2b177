package taperbook.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.diagnostics.Checked;
import taperbook.input.mapping.Foreign;
import taperbook.session.Caveat;
import taperbook.session.Channel;
import taperbook.session.Session;
import taperbook.session.Trace;

/** Faults of logger recordings. */
final class RecordingFaultsTest {
  /** 0.01 kWh per second, 36 kW; the counter is reset at the reading at 300 s. */
  @Test
  void a_counter_reset_is_continued_and_adds_a_caveat() {
    Checked<Session> checked =
        Given.session(
            "elapsed [s],energy added [kWh]\n"
                + rows(600, i -> i + "," + BigDecimal.valueOf(i < 300 ? i : i - 300, 2)),
            Given.CONDITIONS);
    Trace energy = checked.value().orElseThrow().trace(Channel.ENERGY_ADDED).orElseThrow();
    // 299 steps before and 299 after: the counter lost the step between them.
    assertThat(energy.lastValue()).isCloseTo(5.98, within(1e-9));
    assertThat(Given.sentences(checked))
        .containsExactly(
            "r.csv:302:2: found \"0.00\" after \"2.99\" on line 301; expected an energy"
                + " counter that is not reset; it continues from its earlier value. To fix: leave"
                + " it, or leave the column out so that energy follows from the power."
                + " [energy-reset]");
    // Thirty readings determine the rate: (0.30 + 0.01) / 30 kWh/s, plus a step: 0.0203.
    assertThat(checked.value().orElseThrow().caveats())
        .extracting(Caveat::kind, Caveat::sentence)
        .containsExactly(
            tuple(
                Caveat.Kind.ENERGY_COUNTER,
                "The counter of energy added was reset once, at r.csv:302. It continues from its"
                    + " earlier value; up to 0.02 kWh in between were not counted."));
  }

  @Test
  void a_pause_next_to_power_is_reported() {
    assertThat(
            Given.problems(
                "elapsed [s],power [kW],note\n0,60,\n60,58,pause to look\n120,0,pause\n180,60,\n"))
        .containsExactly(
            "r.csv:3:2: found 58 kW beside the note \"pause to look\"; expected no power, or an"
                + " empty cell, in a row whose note begins with \"pause\"; it is not taken as a"
                + " pause. To fix: write \"pause\" beside the rows in which charging stood still,"
                + " or begin the note with another word. [pause-with-power]");
  }

  /** 0.1 kWh in ten seconds: too coarse to determine the lost energy. */
  @Test
  void a_counter_that_loses_too_much_is_refused() {
    assertThat(
            Given.problems(
                "elapsed [s],energy added [kWh]\n"
                    + rows(60, i -> 10 * i + "," + BigDecimal.valueOf(i < 30 ? i : i - 30, 1))))
        .containsExactly(
            "r.csv:32:2: found \"0.0\" after \"2.9\" on line 31; expected an energy counter"
                + " that does not fall during charging. To fix: leave the column out: the counter"
                + " was reset, up to 0.203 kWh were not counted, and energy then follows from the"
                + " power. [energy-falls]");
  }

  @Test
  void a_fall_to_other_than_zero_is_refused() {
    assertThat(
            Given.problems(
                "elapsed [s],energy added [kWh]\n"
                    + rows(60, i -> i + "," + BigDecimal.valueOf(i < 30 ? i : i - 8, 2))))
        .singleElement()
        .asString()
        .endsWith("To fix: correct it, or leave the cell empty. [energy-falls]");
  }

  @Test
  void missing_rows_are_reported_as_a_dropout() {
    Checked<Session> checked =
        Given.session(
            "elapsed [s],soc [%]\n" + rows(100, i -> (i < 60 ? i : i + 30) + "," + (10 + i / 10)),
            Given.CONDITIONS);
    assertThat(Given.sentences(checked))
        .containsExactly(
            "r.csv:62:1: found no row for 31 s before this one; expected one each 1 s, as"
                + " elsewhere. To fix: leave it, if the recording stopped there. [dropout]");
    assertThat(checked.value().orElseThrow().caveats())
        .extracting(Caveat::kind, Caveat::sentence)
        .containsExactly(
            tuple(
                Caveat.Kind.GAPS,
                "The recording stops once for 31 s, where it usually has a row each 1 s; first at"
                    + " r.csv:62."));
  }

  @Test
  void a_channel_that_is_missing_for_long_is_reported_as_a_dropout() {
    assertThat(
            Given.problems(
                "elapsed [s],soc [%],power [kW]\n"
                    + rows(200, i -> i + ",10," + (i > 49 && i < 60 ? "" : "50"))))
        .containsExactly(
            "r.csv:62:3: found no reading of power for 11 s before this one; expected one each 1 s,"
                + " as elsewhere. To fix: leave it, if the recording stopped there. [dropout]");
  }

  @Test
  void plateaus_and_manual_readings_are_not_dropouts() {
    String byHand = "elapsed [s],soc [%]\n" + rows(60, i -> i * i + "," + i / 2);
    assertThat(Given.problems(byHand)).isEmpty();
    String plateau = "elapsed [s],soc [%]\n" + rows(900, i -> i + "," + (50 + i / 300));
    assertThat(Given.problems(plateau)).isEmpty();
  }

  /** 72,000 rows of six columns, in CPU time, which does not depend on the load of the machine. */
  @Test
  void two_hours_at_ten_readings_per_second_are_parsed_in_seconds() {
    String readings =
        "ms,share,w,wh,temp,volt\n"
            + rows(
                72_000,
                i ->
                    100L * i
                        + ","
                        + BigDecimal.valueOf(100 + i / 90, 3)
                        + ",-50000,"
                        + BigDecimal.valueOf(1_388_889L * i / 1000, 3)
                        + ",25,400");
    List<String> rows =
        List.of(
            "elapsed,ms,s,0.001",
            "soc,share,%,100",
            "power,w,W,-1",
            "energy added,wh,Wh",
            "battery temperature,temp,Cel",
            "voltage,volt,V");
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    long began = threads.getCurrentThreadCpuTime();
    Session session = Given.good(Foreign.session(String.join("\n", rows) + "\n", readings));
    double seconds = (threads.getCurrentThreadCpuTime() - began) / 1e9;
    Trace energy = session.trace(Channel.ENERGY_ADDED).orElseThrow();
    assertThat(energy.size()).isEqualTo(72_000);
    // 50 kW for two hours without the last tenth of a second.
    assertThat(energy.lastValue()).isCloseTo(50.0 * 7199.9 / 3600, within(1e-3));
    assertThat(seconds).isLessThan(5);
  }

  private static String rows(int count, IntFunction<String> row) {
    return IntStream.range(0, count).mapToObj(row).collect(Collectors.joining("\n")) + "\n";
  }
}
