package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import taperbook.cli.ExitStatus;

/** A session in the format of another program, from the proposed map to the verified report. */
@Tag("slow")
final class ForeignSessionTest {
  private static final String FOLDER = "sessions/finch-quarry-lane/";
  @TempDir Path folder;
  private Workplace place = new Workplace(Path.of(""));

  /** The demo with column heads of another program in the readings of one session. */
  @BeforeEach
  void writeForeignHeads() throws IOException {
    place = Workplace.withDemo(folder);
    place.replace(
        FOLDER + "readings.csv",
        "elapsed [min:s],soc [%],power [kW],energy added [kWh],battery temperature [Cel],note",
        "t,soc_pct,power_kw,energy_kwh,battery_c,said");
  }

  @Test
  void check_of_one_report_prints_the_same_proposal_before_problems() throws IOException {
    assertThat(place.run("check", "finch-first-look")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err().lines().findFirst())
        .hasValueSatisfying(l -> assertThat(l).startsWith("a guess, to check row by row:"));
    String named = place.err();
    place.run("check");
    assertThat(place.err().lines().takeWhile(l -> !l.startsWith("error")))
        .containsExactlyElementsOf(named.lines().takeWhile(l -> !l.startsWith("error")).toList());
  }

  @Test
  void check_proposes_a_map_that_reads_the_file() throws IOException {
    assertThat(place.run("check")).isEqualTo(ExitStatus.INPUT_REFUSED);
    List<String> lines = place.err().lines().toList();
    int at = lines.indexOf("item,column or value,unit,factor,offset,format,missing");
    assertThat(lines.get(at - 1))
        .isEqualTo(
            "a guess, to check row by row: with the lines below saved as "
                + FOLDER
                + "columns.csv, the file is read without being changed, and the session is left with"
                + " no error:");
    String map =
        lines.stream().skip(at).takeWhile(l -> l.contains(",")).collect(Collectors.joining("\n"));
    Files.writeString(place.path(FOLDER + "columns.csv"), map + "\n");
    assertThat(place.run("check")).isEqualTo(ExitStatus.DONE);
    assertThat(place.err()).doesNotContain("a guess");
  }

  @Test
  void a_report_of_a_foreign_file_embeds_its_map_and_is_verified() throws IOException {
    Files.writeString(
        place.path(FOLDER + "columns.csv"),
        """
        item,column or value,unit
        file,log.csv
        leading lines,1
        elapsed,t,min:s
        soc,soc_pct,%
        power,power_kw,kW
        energy added,energy_kwh,kWh
        battery temperature,battery_c,Cel
        note,said
        """);
    Files.writeString(
        place.path(FOLDER + "log.csv"), "An invented log\n" + place.text(FOLDER + "readings.csv"));
    Files.delete(place.path(FOLDER + "readings.csv"));
    assertThat(place.run("report", "finch-first-look")).isEqualTo(ExitStatus.DONE);
    assertThat(place.text("reports/finch-first-look/numbers.json"))
        .contains("\"" + FOLDER + "columns.csv\"", "\"" + FOLDER + "log.csv\"");
    String pdf = place.path("reports/finch-first-look/report.pdf").toString();
    assertThat(place.run("verify", pdf)).isEqualTo(ExitStatus.DONE);
    assertThat(place.run("explain", "finch-first-look", "peak_power")).isEqualTo(ExitStatus.DONE);
    assertThat(place.out()).contains(FOLDER + "log.csv:", "power_kw 168");
    // A change of the map alone makes the report outdated.
    place.replace(FOLDER + "columns.csv", "note,said\n", "");
    assertThat(place.run("report", "finch-first-look")).isEqualTo(ExitStatus.DONE);
    assertThat(place.out()).contains("made:");
  }
}
