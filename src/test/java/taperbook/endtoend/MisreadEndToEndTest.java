package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import taperbook.cli.ExitStatus;

/** A reading that contradicts the others, from its file to the page, and its resolution. */
@Tag("slow")
final class MisreadEndToEndTest {
  private static final String READINGS = "sessions/finch-quarry-lane/readings.csv";

  @TempDir private Path folder = Path.of("");

  /** The demo with 186 kW instead of 168 kW in line 9, and a cell in the column next to it. */
  private Workplace withSlip(String asRead) throws IOException {
    Workplace place = Workplace.withDemo(folder);
    String right = place.text(READINGS);
    assertThat(right).contains("3:35,24,168,,,");
    StringBuilder wrong = new StringBuilder();
    int line = 0;
    for (String row : right.split("\n", -1)) {
      line++;
      String cell = line == 1 ? ",as read" : line == 9 ? "," + asRead : ",";
      String slip = line == 9 ? row.replace(",168,", ",186,") : row;
      wrong.append(row.isEmpty() ? "" : slip + cell + "\n");
    }
    Files.writeString(place.path(READINGS), wrong.toString());
    return place;
  }

  private static String plain(String html) {
    return html.replace('\u00a0', ' ').replace("&nbsp;", " ").replace("&#160;", " ");
  }

  @Test
  void a_misread_value_is_reported_by_check_and_on_the_page_with_the_numbers_it_affects()
      throws IOException {
    Workplace place = withSlip("");
    assertThat(place.run("check")).isEqualTo(ExitStatus.DONE);
    assertThat(plain(place.err()))
        .contains(READINGS + ":9:3")
        .contains("power 186 kW")
        .contains("(168: digits swapped?), by the other readings")
        .contains("[reading-doubtful]");
    assertThat(place.run("report", "finch-first-look")).isEqualTo(ExitStatus.DONE);
    assertThat(plain(place.text("reports/finch-first-look/report.html")))
        .contains("The power of 186 kW in " + READINGS + ":9 does not fit the other readings")
        .contains("It was kept as it was read.")
        .contains("“Peak power” would be 168 kW instead of 186 kW");
    assertThat(plain(place.text("reports/finch-first-look/numbers.json")))
        .contains("“Peak power” would be 168 kW instead of 186 kW");
  }

  @Test
  void a_confirmed_reading_is_kept_and_the_page_states_it() throws IOException {
    Workplace place = withSlip("confirmed power");
    assertThat(place.run("check")).isEqualTo(ExitStatus.DONE);
    assertThat(place.err()).doesNotContain("[reading-doubtful]");
    assertThat(place.run("report", "finch-first-look")).isEqualTo(ExitStatus.DONE);
    assertThat(plain(place.out())).containsPattern("Peak power +186 kW");
    assertThat(plain(place.text("reports/finch-first-look/report.html")))
        .contains("Looked at again and confirmed: power in " + READINGS + ":9.");
  }

  @Test
  void a_doubtful_reading_is_omitted_and_the_page_states_it() throws IOException {
    Workplace place = withSlip("doubtful power");
    assertThat(place.run("report", "finch-first-look")).isEqualTo(ExitStatus.DONE);
    assertThat(place.err()).doesNotContain("[reading-doubtful]");
    assertThat(plain(place.out())).containsPattern("Peak power +168 kW");
    assertThat(plain(place.text("reports/finch-first-look/report.html")))
        .contains("Left out as doubtful: power in " + READINGS + ":9.");
  }

  @Test
  void an_impossible_value_is_refused_until_it_is_confirmed() throws IOException {
    Workplace place = withSlip("");
    String slip = place.text(READINGS).replace(",186,", ",822,");
    Files.writeString(place.path(READINGS), slip);
    assertThat(place.run("report", "finch-first-look")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(plain(place.err())).contains("power 822 kW").contains("[reading-impossible]");
    Files.writeString(
        place.path(READINGS), slip.replace("3:35,24,822,,,,", "3:35,24,822,,,,confirmed power"));
    assertThat(place.run("check")).as(place.err()).isEqualTo(ExitStatus.DONE);
  }
}
