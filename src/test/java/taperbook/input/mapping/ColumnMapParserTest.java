package taperbook.input.mapping;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import taperbook.input.Given;
import taperbook.session.Channel;
import taperbook.session.Session;

final class ColumnMapParserTest {
  private static final String READINGS = "t,level,kw,kw,x\n0,10,50,51,a\n60,11,50,51,b\n";
  private static final String GOOD = "elapsed,t,s\nsoc,level,%\n";

  @Test
  void unmapped_columns_are_ignored_without_a_notice() {
    Session session = Given.good(Foreign.session(GOOD, READINGS));
    assertThat(session.traces().keySet()).containsExactly(Channel.SOC);
    assertThat(session.caveats()).isEmpty();
  }

  @Test
  void columns_may_be_named_by_their_number() {
    Session session = Given.good(Foreign.session(GOOD + "power,#4,kW\n", READINGS));
    assertThat(session.trace(Channel.POWER).orElseThrow().value(1)).isEqualTo(51);
  }

  @Test
  void missing_columns_are_refused_with_the_existing_ones() {
    assertThat(
            Foreign.problems(
                "elapsed,clock time,s\nsoc,levl,%\npower,kw,kW\nvoltage,#9,V\ncurrent,level,A\n",
                READINGS))
        .containsExactly(
            "columns.csv:2:2: found \"clock time\"; expected one of the columns of r.csv, line 1: \"t\","
                + " \"level\", \"kw\", \"kw\", \"x\". To fix: write the head as it is there, or"
                + " the column's number, as in #3. [column-missing]",
            "columns.csv:3:2: found \"levl\"; expected one of the columns of r.csv, line 1: \"t\","
                + " \"level\", \"kw\", \"kw\", \"x\". To fix: write \"level\". [column-missing]",
            "columns.csv:4:2: found \"kw\", which is the head of 2 columns; expected one column."
                + " To fix: write the number of the one that is meant: #3 or #4. [column-twice]",
            "columns.csv:5:2: found \"#9\"; expected one of the columns of r.csv, line 1: \"t\","
                + " \"level\", \"kw\", \"kw\", \"x\". To fix: write the head as it is there, or"
                + " the column's number, as in #3. [column-missing]");
  }

  @Test
  void a_column_for_two_items_is_refused() {
    assertThat(Foreign.problems(GOOD + "power,level,kW\n", READINGS))
        .containsExactly(
            "columns.csv:4:2: found \"level\", as for soc on line 3; expected each column for one"
                + " item. To fix: name another column, or remove one of the two rows."
                + " [column-twice]");
  }

  @Test
  void all_problems_of_the_map_are_reported_together() {
    String rows =
        """
        elapsed,t,sec
        soc,,%
        sok,level,%
        power,kw,kW,0
        power,kw,kW
        energy added,e,kWh,,first
        clock,t,,,,dd.MM.yyyy
        leading lines,few
        delimiter,pipe
        decimal mark,dot
        time zone,Europe/Berlni
        file,../other.csv
        voltage,v,V,,,,,
        note,n,s
        """;
    assertThat(Foreign.problems(rows, READINGS))
        .containsExactly(
            "columns.csv:2:3: found \"sec\"; expected one of the units min:s, h:min:s, s, min, h."
                + " To fix: write \"s\". [unit-not-understood]",
            "columns.csv:3:2: found no column or value for soc; expected the head of a"
                + " column in the file of readings, or its number as in #3. To fix: write the"
                + " head, or remove the row. [column-missing]",
            "columns.csv:4:1: found \"sok\"; expected an item of this file. To fix: write \"soc\"."
                + " [item-unknown]",
            "columns.csv:5:4: found \"0\"; expected a number to multiply by, not zero. To"
                + " fix: write a plain number, as in -1 or 0.001, or leave the cell empty."
                + " [value-not-understood]",
            "columns.csv:6:1: found \"power\" as on line 5; expected each item once. To fix:"
                + " remove one of the two rows. [item-twice]",
            "columns.csv:7:5: found \"first\"; expected a number to add, in the unit, or the words"
                + " less first. To fix: write a plain number, as in -1 or 0.001, or leave the cell"
                + " empty. [value-not-understood]",
            "columns.csv:8:1: found \"clock\"; expected one row for the time, and there is one for"
                + " elapsed. To fix: remove one of the two rows. [item-twice]",
            "columns.csv:8:6: found \"dd.MM.yyyy\"; expected ISO 8601, epoch s, epoch ms, or a"
                + " pattern with a time and a whole date or none, of the letters yyyy yy MM M dd d"
                + " HH H hh h mm ss S a XXX T. To fix: write the pattern of the times, as in"
                + " dd.MM.yyyy HH:mm:ss. [value-not-understood]",
            "columns.csv:9:2: found \"few\"; expected a whole number from 0 to 9999. To fix: count"
                + " them and write the number. [value-not-understood]",
            "columns.csv:10:2: found \"pipe\"; expected comma, semicolon or tab. To fix: write the"
                + " word, or remove the row. [value-not-understood]",
            "columns.csv:11:2: found \"dot\"; expected point or comma. To fix: write the word, or"
                + " remove the row. [value-not-understood]",
            "columns.csv:12:2: found \"Europe/Berlni\"; expected the name of a time zone in the"
                + " IANA data base, as in Europe/Berlin, or UTC. To fix: write \"Europe/Berlin\"."
                + " [value-not-understood]",
            "columns.csv:13:2: found \"../other.csv\"; expected the name of a CSV file in the same"
                + " folder, as in log.csv, that has no other meaning. To fix: write its name, or"
                + " remove the row if it is readings.csv. [value-not-understood]",
            "columns.csv:15:3: found \"s\"; expected no unit for note. To fix: leave the unit"
                + " empty. [unit-not-understood]");
  }

  @Test
  void a_map_requires_a_time_and_a_channel() {
    assertThat(Foreign.problems("voltage,kw,V\ndate,t\n", READINGS))
        .containsExactly(
            "columns.csv: found no row for elapsed and none for clock; expected one row for the"
                + " time. To fix: add a row for elapsed times, or one for clock times."
                + " [item-missing]",
            "columns.csv: found no row for soc, power or energy added; expected a row for at least"
                + " one of them. To fix: add one of them. [item-missing]",
            "columns.csv:3:1: found \"date\"; expected a row for clock beside one for date."
                + " To fix: add the row for clock, or remove this one. [item-missing]");
  }

  @Test
  void cells_are_reported_at_their_location_in_the_foreign_file_and_as_converted() {
    assertThat(Foreign.problems("elapsed,t,s\nsoc,level,%,100\n", "x,t,level\n,0,0.1\n,5,17\n"))
        .containsExactly(
            "r.csv:3:3: found \"17\", by columns.csv 1700 %; expected a number from 0 to 100 %."
                + " To fix: correct unit, factor or offset in columns.csv, or the value."
                + " [cell-out-of-range]");
    assertThat(Foreign.problems(GOOD + "decimal mark,comma\n", "t;level\n0;1.5\n5;2,5\n"))
        .containsExactly(
            "r.csv:2:2: found \"1.5\"; expected the decimal mark \",\" that columns.csv states."
                + " To fix: state the other decimal mark in columns.csv, or correct the number."
                + " [cell-not-a-number]");
    assertThat(
            Foreign.problems(
                "clock,t,,,,dd.MM.yyyy HH:mm\nsoc,level,%\n",
                "t,level\n14.03.2026 10:05,1\n30.02.2026 10:06,2\n"))
        .containsExactly(
            "r.csv:3:1: found \"30.02.2026 10:06\"; expected a time after dd.MM.yyyy HH:mm, as in"
                + " 14.03.2026 10:02. To fix: state the format in columns.csv that the times have,"
                + " or mark what is missing there. [cell-not-a-time]");
  }
}
