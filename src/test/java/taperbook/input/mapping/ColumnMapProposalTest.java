package taperbook.input.mapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.session.InputFile;

/** Proposals for invented layouts, whose meaning is known by construction. */
final class ColumnMapProposalTest {
  @Test
  void names_with_units_are_accepted() {
    assertThat(
            propose(
                "elapsed_s,soc_pct,power_kw,energy_kwh,battery_c\n"
                    + rows("%1$d0,%1$d,50,%1$d.5,25")))
        .isEqualTo(
            """
            elapsed,elapsed_s,s
            soc,soc_pct,%
            power,power_kw,kW
            energy added,energy_kwh,kWh,,less first
            battery temperature,battery_c,Cel
            without errors""");
  }

  @Test
  void fractions_watts_signs_and_epochs_are_detected() {
    assertThat(
            propose(
                "timestamp,stateOfCharge,battPower_W,chargedEnergy_Wh,battTempC,odo\n"
                    + rows("17734789%1$02d000,0.%1$02d,-50000,%1$d00,25,7")))
        .isEqualTo(
            """
            clock,timestamp,,,,epoch ms
            soc,stateOfCharge,%,100
            power,battPower_W,W,-1
            energy added,chargedEnergy_Wh,Wh
            battery temperature,battTempC,Cel
            without errors""");
  }

  @Test
  void leading_lines_units_and_missing_value_marks_are_detected() {
    assertThat(
            propose(
                "Log\nNo;42\n\nZeit;Ladestand;Leistung;Akkutemperatur\nhh:mm;%;kW;C\n"
                    + rows("10:%1$02d:00;%1$d,5;50;NA")
                        .replaceFirst("NA", "25,5")
                        .replaceFirst("NA", "26")
                        .replace(";NA\n", ";25\n")
                        .replaceFirst(";25\n", ";NA\n")))
        .isEqualTo(
            """
            leading lines,3
            rows of units,1
            clock,Zeit
            soc,Ladestand,%
            power,Leistung,kW
            battery temperature,Akkutemperatur,Cel,,,,NA
            without errors""");
  }

  @Test
  void separate_dates_and_station_columns_are_detected() {
    assertThat(
            propose(
                "Date,Time,SoC (%),DC power (kW),Charger energy (kWh),Ambient temp (C),Current (A)\n"
                    + rows("03/14/2026,10:%1$02d:00 AM,%1$d,50,%1$d,12,-125")))
        .isEqualTo(
            """
            clock,Time,,,,hh:mm:ss a
            date,Date,,,,MM/dd/yyyy
            soc,SoC (%),%
            power,DC power (kW),kW
            station energy,Charger energy (kWh),kWh
            current,Current (A),A,-1
            without errors""");
  }

  @Test
  void cell_temperature_is_preferred_to_ambient_temperature_and_omitted_columns_are_named() {
    String file =
        "time_s,OutsideTemp,Temp,cell_temp_min,SOCDisplay,soc_bms,power_kW,drive\n"
            + rows("%1$d0,8,9,25,%1$d.5,%1$d,%1$d000,D");
    assertThat(propose(file))
        .isEqualTo(
            """
            elapsed,time_s,s
            battery temperature,cell_temp_min,Cel
            soc,SOCDisplay,%
            without errors""");
    assertThat(leftOut(file))
        .containsExactly(
            "\"OutsideTemp\" (#2): it is not the battery's, by its name",
            "\"Temp\" (#3): it looks like battery temperature, for which \"cell_temp_min\" (#4) is"
                + " taken",
            "\"soc_bms\" (#6): it looks like soc, for which \"SOCDisplay\" (#5) is taken",
            "\"power_kW\" (#7): it looks like power, but its numbers from 1000 to 59000 are none in"
                + " kW; add a row with a factor if they are",
            "\"drive\" (#8): its cells are no numbers");
  }

  @Test
  void megawatts_are_accepted() {
    assertThat(propose("time_s,soc,power_kW\n" + rows("%1$d0,%1$d,39%1$02d")))
        .contains("power,power_kW,kW\nwithout errors");
  }

  @Test
  void the_charge_column_is_never_omitted() {
    assertThat(propose("time_s,Ladezustand,kW\n" + rows("%1$d0,%1$d.5,50")))
        .contains("soc,Ladezustand,%\n");
    assertThat(propose("time_s,soc_permille,kW\n" + rows("%1$d0,%1$d5,50")))
        .contains("soc,soc_permille,%,0.1\n");
    assertThat(propose("time_s,SoC,kW\n" + rows("%1$d0,%1$d %%,50")))
        .contains("soc,SoC,%\n")
        .contains("with errors");
    assertThat(propose("time_s,target_soc,soc,charge_rate,kW\n" + rows("%1$d0,80,%1$d,1,50")))
        .contains("soc,soc,%\n")
        .doesNotContain("target_soc");
  }

  @Test
  void padded_lines_above_the_heads_are_not_heads() {
    assertThat(propose("Export,,\nvehicle,Finch,\n,,\ntime_s,soc,kW\n" + rows("%1$d0,%1$d,50")))
        .startsWith("leading lines,3\n");
  }

  @Test
  void a_comma_that_may_group_thousands_is_not_a_decimal_mark() {
    String file = "time_s,soc,power_W\n" + rows("%1$d0,%1$d,\"82,4%1$02d\"");
    assertThat(propose(file)).doesNotContain("decimal mark");
    assertThat(propose(file.replace("82,401", "82,41"))).contains("decimal mark,comma");
  }

  @Test
  void encodings_are_detected() {
    String file = "Zeit;Ladezustand;Leistung (kW);T\u00fcr\n" + rows("%1$d0;%1$d,5;50;zu");
    for (String encoding : List.of("ISO-8859-1", "UTF-16")) {
      InputFile encoded = new InputFile("s/readings.csv", file.getBytes(Charset.forName(encoding)));
      ColumnMapProposal proposal = ColumnMapProposal.of(encoded).orElseThrow();
      assertThat(proposal.lines())
          .containsExactly(
              Foreign.HEADS.strip(),
              "encoding," + encoding,
              "elapsed,Zeit,s",
              "soc,Ladezustand,%",
              "power,Leistung (kW),kW");
      assertThat(proposal.leftOut()).containsExactly("\"T\u00fcr\" (#4): its cells are no numbers");
      assertThat(proposal.errors()).isZero();
    }
  }

  private static List<String> leftOut(String text) {
    return ColumnMapProposal.of(Foreign.file("s/readings.csv", text)).orElseThrow().leftOut();
  }

  @Test
  void nothing_is_proposed_if_no_column_is_identified() {
    assertThat(ColumnMapProposal.of(Foreign.file("s/readings.csv", "a,b\n" + rows("%1$d,x"))))
        .isEmpty();
    assertThat(ColumnMapProposal.of(Foreign.file("s/readings.csv", ""))).isEmpty();
  }

  private static String propose(String text) {
    ColumnMapProposal proposal =
        ColumnMapProposal.of(Foreign.file("s/readings.csv", text)).orElseThrow();
    assertThat(proposal.path()).isEqualTo("s/columns.csv");
    assertThat(proposal.lines().get(0) + "\n").isEqualTo(Foreign.HEADS);
    return proposal.lines().stream().skip(1).collect(Collectors.joining("\n"))
        + (proposal.errors() == 0 ? "\nwithout errors" : "\nwith errors");
  }

  private static String rows(String pattern) {
    return IntStream.range(1, 60)
            .mapToObj(i -> String.format(java.util.Locale.ROOT, pattern, i))
            .collect(Collectors.joining("\n"))
        + "\n";
  }
}
