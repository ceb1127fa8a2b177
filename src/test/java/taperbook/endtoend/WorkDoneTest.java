package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import taperbook.Main;

/**
 * Amount of work of a report, counted and not timed, so that the test does not depend on the load
 * of the machine: bytes that all threads of a process allocate, classes that it loads, and pages
 * that it lays out. The limits are 1.3 times the count on Java 17 in November 2026; they are not an
 * external reference and may be changed deliberately.
 */
@Tag("slow")
final class WorkDoneTest {
  private static final long MOST_MEBIBYTES = 700;
  private static final long MOST_CLASSES = 10_400;
  private static final int MOST_PAGES = 22;
  private static final long MINUTES = 5;

  /** A collection: mebibytes in use before and after it. */
  private static final Pattern COLLECTION = Pattern.compile("Pause [^\n]* (\\d+)M->(\\d+)M\\(");

  /** Kibibytes in use in a generation at the end. */
  private static final Pattern GENERATION =
      Pattern.compile("generation +total \\d+K, used (\\d+)K");

  @TempDir private Path folder = Path.of("");

  @Test
  void a_report_of_one_session_takes_at_most_the_recorded_work() throws Exception {
    Workplace place = Workplace.withDemo(folder);
    Files.writeString(
        place.path("reports/look.md"),
        """
        ---
        title: Work
        author: A test
        published: 2026-05-01
        session: finch-quarry-lane
        range test: finch-ring-road
        ---
        Invented.
        """);
    Path collections = folder.resolve("collections.log");
    Path classes = folder.resolve("classes.log");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Xmn48m",
                "-Djava.awt.headless=true",
                "-Xlog:gc,gc+heap+exit=info:file=" + collections,
                "-Xlog:class+load=info:file=" + classes + "::filecount=0",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                "report",
                "look",
                "--folder",
                folder.toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("output.log").toFile())
            .start();
    assertThat(process.waitFor(MINUTES, TimeUnit.MINUTES)).isTrue();
    assertThat(process.exitValue()).as(place.text("output.log")).isZero();

    assertThat(mebibytesAllocated(place.text("collections.log")))
        .as("MiB allocated")
        .isBetween(1L, MOST_MEBIBYTES);
    assertThat(place.text("classes.log").lines().count())
        .as("classes loaded")
        .isBetween(1L, MOST_CLASSES);
    assertThat(pages("report.pdf") + pages("methods.pdf")).as("pages").isBetween(1, MOST_PAGES);
  }

  private static long mebibytesAllocated(String log) {
    long allocated = 0;
    long afterLast = 0;
    for (MatchResult each : COLLECTION.matcher(log).results().toList()) {
      allocated += Long.parseLong(each.group(1)) - afterLast;
      afterLast = Long.parseLong(each.group(2));
    }
    List<MatchResult> atEnd = GENERATION.matcher(log).results().toList();
    assertThat(atEnd).as("generations in %s", log).hasSize(2);
    long kibibytes = atEnd.stream().mapToLong(g -> Long.parseLong(g.group(1))).sum();
    return allocated + kibibytes / 1024 - afterLast;
  }

  private int pages(String file) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(folder.resolve("reports/look/" + file).toFile())) {
      return pdf.getNumberOfPages();
    }
  }
}
