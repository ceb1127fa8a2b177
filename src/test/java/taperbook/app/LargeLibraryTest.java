package taperbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Hundreds of sessions in one library. */
final class LargeLibraryTest {
  private static final int SESSIONS = 300;

  @TempDir private Path folder = Path.of("");

  /** The limit is for a busy machine; two idle cores take a tenth of it. */
  @Test
  @Timeout(value = 300, unit = TimeUnit.SECONDS)
  void three_hundred_sessions_are_made_into_one_page_of_modest_size() throws IOException {
    Workplace place = ManySessions.write(folder, SESSIONS);
    assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
    String html = place.text("reports/library/report.html");
    assertThat(Jsoup.parse(html).select("table.sortable tbody tr")).hasSize(SESSIONS);
    // Curve, table row and words; two megabytes open on a phone: common practice, no source.
    assertThat(html.length()).isLessThan(SESSIONS * 6_000);
    assertThat(place.files("reports/library/figures").keySet())
        .hasSize(2 * (2 + 25))
        .contains("library-curves-25.png");
  }
}
