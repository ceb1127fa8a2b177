package taperbook.check.foreign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Guesses at invented layouts; what is right follows from how each file was written. */
final class ColumnMapProposalTest {
  @Test
  void namesWithUnitsAreTaken() {
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
  void sharesWattsSignsAndEpochsAreSeen() {
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
  void leadingLinesUnitsAndMissingMarksAreSeen() {
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
  void datesApartAndStationColumnsAreSeen() {
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
  void nothingIsProposedWhereNothingCanBeTold() {
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
