package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import taperbook.cli.ExitStatus;

/** Events of a session, from its file to the page; see {@code reference/interruption}. */
@Tag("slow")
final class EventsEndToEndTest {
  private static final String REPORT =
      """
      ---
      title: A stop with a fault
      author: A tester
      published: 2026-05-24
      session: stopped
      compare: finch-quarry-lane
      range test: finch-ring-road
      distances: 100 km
      soc marks: 20, 50, 80 %
      window: 10-80 %
      units: km
      ---
      ${table("events")}
      """;

  @TempDir private Path folder = Path.of("");

  private Workplace withStop() throws IOException {
    Workplace place = Workplace.withDemo(folder);
    Path stop = Files.createDirectories(folder.resolve("sessions/stopped"));
    Files.copy(
        folder.resolve("sessions/finch-quarry-lane/conditions.csv"),
        stop.resolve("conditions.csv"));
    try (InputStream in = getClass().getResourceAsStream("/reference/interruption/readings.csv")) {
      Files.write(stop.resolve("readings.csv"), in.readAllBytes());
    }
    Files.writeString(folder.resolve("reports/stopped.md"), REPORT, StandardCharsets.UTF_8);
    return place;
  }

  @Test
  void an_interruption_appears_in_headline_table_chart_comparison_and_console() throws IOException {
    Workplace place = withStop();
    assertThat(place.run("report", "stopped")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(place.out())
        .contains("Time from 10 % to 80 %, ")
        .contains("Time to add 100 km, by the driven range, interruption included");
    String html = place.text("reports/stopped/report.html").replace('\u00a0', ' ');
    String plain = html.replace("&nbsp;", " ").replace("&#160;", " ");
    assertThat(plain)
        .contains("<span class=\"label\">Time from 10 % to 80 %, interruption included</span>")
        .contains("Time that charging was interrupted")
        .contains("What happened")
        .contains("between 7 min 55 s and 8 min 20 s until between 12 min 2 s and 12 min 20 s")
        .contains("Interruption: station showed a fault; lamp red")
        .contains("Times here include the 4 min 4 s for which the charging of A was interrupted.")
        .contains("Numbers on top: events.")
        .contains("That includes an interruption; without it, it takes ");
    // The text alternative of the chart over time names the events; that of the chart over charge
    // does not.
    assertThat(alternative(plain, "power-over-time"))
        .contains("1 30 s, quiet fan; 2 between 7 min 55 s")
        .contains("4 22 min 20 s, cable warm.");
    assertThat(alternative(plain, "power-over-soc")).doesNotContain("quiet fan");
  }

  private static String alternative(String html, String figure) {
    int at = html.indexOf("figure id=\"figure-" + figure + "\"");
    int from = html.indexOf("aria-label=\"", at);
    return html.substring(from, html.indexOf("\">", from));
  }

  @Test
  void notes_of_legs_are_in_their_rows_and_explain_accepts_both_numbers() throws IOException {
    Workplace place = withStop();
    assertThat(place.run("report", "stopped")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(place.text("reports/stopped/report.html"))
        .contains("<td class=\"note\">light rain for ten minutes</td>");
    assertThat(place.run("explain", "stopped", "time_soc_10_80_without_interruptions"))
        .isEqualTo(ExitStatus.DONE);
    assertThat(place.out().replaceAll("\\s+", " "))
        .contains("begins somewhere between the last row with power and the first one without");
  }
}
