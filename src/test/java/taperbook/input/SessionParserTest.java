package taperbook.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static taperbook.input.Given.CONDITIONS;
import static taperbook.input.Given.goodSession;
import static taperbook.input.Given.problems;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.diagnostics.Checked;
import taperbook.quantity.Interval;
import taperbook.session.Channel;
import taperbook.session.RowRef;
import taperbook.session.Session;
import taperbook.session.Trace;

final class SessionParserTest {
  @Test
  void readings_are_converted_to_traces_of_their_channels() {
    Session session =
        goodSession(
            """
            elapsed [min:s],soc [%],power [kW],energy added [kWh],note
            0:00,10,50,,plugged in
            1:30,,171,2,
            75:30,80,,43,taken off
            """);
    assertThat(session.name()).isEqualTo("s");
    assertThat(session.vehicle()).isEqualTo("Northmoor Finch");
    assertThat(session.recorded()).isEqualTo(new Interval(0, 4530));
    assertThat(session.traces().keySet())
        .containsExactly(Channel.SOC, Channel.POWER, Channel.ENERGY_ADDED);
    Trace soc = session.trace(Channel.SOC).orElseThrow();
    assertThat(soc.size()).isEqualTo(2);
    assertThat(soc.second(1)).isEqualTo(4530);
    assertThat(soc.value(1)).isEqualTo(80);
    assertThat(soc.row(1)).isEqualTo(new RowRef("r.csv", 4));
    assertThat(session.trace(Channel.POWER).orElseThrow().row(1)).isEqualTo(new RowRef("r.csv", 3));
    assertThat(session.notes())
        .containsExactly(
            new Session.Note(0, "plugged in", new RowRef("r.csv", 2)),
            new Session.Note(4530, "taken off", new RowRef("r.csv", 4)));
  }

  @Test
  void heads_accept_any_letter_case_and_spaces() {
    Session session = goodSession(" ELAPSED  [ min:s ] , Energy  ADDED[kWh]\n0:00,1\n1:00,2\n");
    assertThat(session.traces().keySet()).containsExactly(Channel.ENERGY_ADDED);
  }

  @Test
  void values_are_converted_to_base_units() {
    Session session =
        goodSession(
            """
            elapsed [s],soc [%],battery temperature [degF],range shown [mi],power [W]
            0,10,68,100,50000
            60,11,95,200,60000
            """);
    assertThat(values(session, Channel.BATTERY_TEMPERATURE)[1]).isCloseTo(35, within(1e-8));
    assertThat(values(session, Channel.RANGE_SHOWN)).containsExactly(160.9344, 321.8688);
    assertThat(values(session, Channel.POWER)).containsExactly(50, 60);
    Trace temperature = session.trace(Channel.BATTERY_TEMPERATURE).orElseThrow();
    assertThat(temperature.halfStep()).isCloseTo(0.5 / 1.8, within(1e-12));
    assertThat(session.trace(Channel.RANGE_SHOWN).orElseThrow().halfStep()).isEqualTo(0.804672);
    assertThat(session.trace(Channel.POWER).orElseThrow().halfStep())
        .isCloseTo(0.0005, within(1e-15));
  }

  @ParameterizedTest
  @CsvSource({"10,11,0.5", "10,12.5,0.05", "10.00,11,0.005", "10,1.25e1,0.05"})
  void half_step_follows_the_finest_place_written(String first, String second, double halfStep) {
    Session session = goodSession("elapsed [s],soc [%]\n0," + first + "\n9," + second + "\n");
    assertThat(session.trace(Channel.SOC).orElseThrow().halfStep()).isEqualTo(halfStep);
  }

  @Test
  void stated_resolutions_win() {
    String readings =
        """
        elapsed [min],soc [%],power [kW],energy added [kWh],station power [kW]
        0,10,50,0,50
        1.5,12,50,1,50
        """;
    String conditions =
        CONDITIONS
            + """
              state of charge resolution,0.5,%,displayed
              power resolution,5,kW,displayed
              energy resolution,100,Wh,displayed
              clock resolution,2,s,measured
              """;
    Session session = Given.good(Given.session(readings, conditions));
    assertThat(session.trace(Channel.SOC).orElseThrow().halfStep()).isEqualTo(0.25);
    assertThat(session.trace(Channel.POWER).orElseThrow().halfStep()).isEqualTo(2.5);
    assertThat(session.trace(Channel.ENERGY_ADDED).orElseThrow().halfStep()).isEqualTo(0.05);
    assertThat(session.trace(Channel.STATION_POWER).orElseThrow().halfStep()).isEqualTo(0.5);
    assertThat(session.trace(Channel.SOC).orElseThrow().clockHalfStep()).isEqualTo(1);
  }

  @Test
  void decimal_commas_are_accepted_if_no_comma_separates_cells() {
    Session session = goodSession("elapsed [s];soc [%]\n0,5;10,5\n1;\n2;11,25\n");
    assertThat(values(session, Channel.SOC)).containsExactly(10.5, 11.25);
    assertThat(session.trace(Channel.SOC).orElseThrow().second(0)).isEqualTo(0.5);
  }

  @Test
  void hyphens_and_minus_signs_are_accepted() {
    Session session = goodSession("elapsed [s],power [kW]\n0,-1.5\n1,\u22122\n2,+3\n3,.5\n4,4.\n");
    assertThat(values(session, Channel.POWER)).containsExactly(-1.5, -2, 3, 0.5, 4);
  }

  @Test
  void blank_columns_and_equal_times_are_accepted() {
    Session session = goodSession("elapsed [s],soc [%],power [kW]\n0,10,\n0,11,\n");
    assertThat(session.traces().keySet()).containsExactly(Channel.SOC);
    assertThat(session.recorded()).isEqualTo(new Interval(0, 0));
  }

  @Test
  void unknown_columns_are_ignored_with_a_notice() {
    Checked<Session> checked =
        Given.session(
            "elapsed [s],soc [%],powr [kW],driver,,note\n0,10,x,A,y,\n1,11,,B,,n\n", CONDITIONS);
    assertThat(checked.isUsable()).isTrue();
    assertThat(Given.sentences(checked))
        .containsExactly(
            "r.csv:1:3: found \"powr [kW]\"; expected a column that this file can have; this one is"
                + " ignored. To fix: write \"power [kW]\" if that is meant, else leave it."
                + " [column-ignored]",
            "r.csv:1:4: found \"driver\"; expected a column that this file can have; this one is"
                + " ignored. To fix: leave it, if it is not needed. [column-ignored]",
            "r.csv:1:5: found a column without a head; expected a column that this file can have;"
                + " this one is ignored. To fix: leave it, if it is not needed."
                + " [column-ignored]");
  }

  @Test
  void falling_state_of_charge_is_kept_with_a_notice() {
    Checked<Session> checked =
        Given.session("elapsed [s],soc [%]\n0,10\n1,12\n2,\n3,11\n4,11\n", CONDITIONS);
    assertThat(values(checked.value().orElseThrow(), Channel.SOC)).containsExactly(10, 12, 11, 11);
    assertThat(Given.sentences(checked))
        .containsExactly(
            "r.csv:5:2: found \"11\" after \"12\" on line 3; expected a state of charge that does"
                + " not fall during charging; the value is kept. To fix: correct it, if it is a"
                + " slip. [soc-falls]");
  }

  @Test
  void falling_energy_is_refused() {
    assertThat(
            problems(
                "elapsed [s],energy added [kWh],station energy [kWh]\n0,1,1\n1,0.9,2\n2,3,1.5\n"))
        .containsExactly(
            "r.csv:3:2: found \"0.9\" after \"1\" on line 2; expected an energy counter that does"
                + " not fall during charging. To fix: correct it, or leave the cell empty."
                + " [energy-falls]",
            "r.csv:4:3: found \"1.5\" after \"2\" on line 3; expected an energy counter that does"
                + " not fall during charging. To fix: correct it, or leave the cell empty."
                + " [energy-falls]");
  }

  @Test
  void readings_without_a_time_are_refused() {
    assertThat(problems("elapsed [s],soc [%],note,x\n0,10,,\n,11,,\n,,lost,\n2,12,,\n,,,only x\n"))
        .filteredOn(p -> !p.contains("column-ignored"))
        .containsExactly(
            "r.csv:3:1: found readings without a time; expected a time in each row that has a"
                + " reading or a note. To fix: write the time, or remove the row."
                + " [time-missing]",
            "r.csv:4:1: found readings without a time; expected a time in each row that has a"
                + " reading or a note. To fix: write the time, or remove the row."
                + " [time-missing]");
  }

  @Test
  void too_few_readings_are_refused() {
    assertThat(problems("elapsed [s],soc [%]\n0,10\n"))
        .containsExactly(
            "r.csv: found one row with a time; expected at least two rows with a time, and readings"
                + " of state of charge, power or energy. To fix: write more of the session down."
                + " [too-few-readings]");
    assertThat(problems("elapsed [s],soc [%],voltage [V]\n0,,400\n1,,401\n"))
        .containsExactly(
            "r.csv: found no reading of state of charge, power or energy; expected at least"
                + " two rows with a time, and readings of state of charge, power or energy. To"
                + " fix: write more of the session down. [too-few-readings]");
  }

  @Test
  void out_of_range_is_reported_in_the_unit_used() {
    assertThat(
            problems(
                """
                elapsed [s],soc [%],battery temperature [degF],range shown [mi],power [W]
                0,100.5,-77,1865,-50001
                1,100,-76,1864,1000000
                """))
        .containsExactly(
            "r.csv:2:2: found \"100.5\"; expected a number from 0 to 100 %. To fix: correct the"
                + " value, or the unit in the column head. [cell-out-of-range]",
            "r.csv:2:3: found \"-77\"; expected a number from -76 to 248 degF. To fix: correct the"
                + " value, or the unit in the column head. [cell-out-of-range]",
            "r.csv:2:4: found \"1865\"; expected a number from 0 to 1864.1 mi. To fix: correct the"
                + " value, or the unit in the column head. [cell-out-of-range]",
            "r.csv:2:5: found \"-50001\"; expected a number from -50000 to 4000000 W. To"
                + " fix: correct the value, or the unit in the column head. [cell-out-of-range]");
  }

  @ParameterizedTest
  @CsvSource({
    "power [kW],-51,4001,from -50 to 4000 kW",
    "energy added [kWh],-1.1,1000.1,from -1 to 1000 kWh",
    "battery temperature [Cel],-60.1,120.1,from -60 to 120 Cel",
    "voltage [V],-1,2001,from 0 to 2000 V",
    "current [A],-1001,4001,from -1000 to 4000 A",
    "range shown [km],-1,3000.5,from 0 to 3000 km",
    "station power [kW],-51,1e9,from -50 to 4000 kW",
    "station energy [kWh],-2,1001,from -1 to 1000 kWh"
  })
  void every_channel_has_its_range(String head, String low, String high, String range) {
    String readings = "elapsed [s],soc [%]," + head + "\n0,1," + low + "\n1,2," + high + "\n";
    assertThat(problems(readings))
        .hasSize(2)
        .allMatch(p -> p.contains("expected a number " + range + ". To fix"));
  }

  @Test
  void problems_of_both_files_are_reported_together() {
    Checked<Session> checked =
        Given.session("elapsed [s],soc [%]\n0,x\n1,y\n", CONDITIONS.replace("12000", "many"));
    assertThat(checked.isUsable()).isFalse();
    assertThat(checked.problems().stream().map(p -> p.place().toString()))
        .containsExactly("r.csv:2:2", "r.csv:3:2", "c.csv:4:2");
  }

  private static double[] values(Session session, Channel channel) {
    Trace trace = session.trace(channel).orElseThrow();
    double[] values = new double[trace.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = trace.value(i);
    }
    return values;
  }
}
