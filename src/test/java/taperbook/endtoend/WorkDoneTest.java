package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
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
  private static final long MOST_KIBIBYTES_PER_ROW = 33;
  private static final long MINUTES = 5;

  /** A collection: mebibytes in use before and after it. */
  private static final Pattern COLLECTION = Pattern.compile("Pause [^\n]* (\\d+)M->(\\d+)M\\(");

  /** Kibibytes in use in a generation at the end. */
  private static final Pattern GENERATION =
      Pattern.compile("generation +total \\d+K, used (\\d+)K");

  @TempDir private Path folder = Path.of("");

  /**
   * The work of a process.
   *
   * @param mebibytes memory that its threads allocate, MiB
   * @param classes number of classes that it loads
   */
  private record Work(long mebibytes, long classes) {}

  @Test
  void a_report_of_one_session_takes_at_most_the_recorded_work() throws Exception {
    Workplace place = Workplace.withDemo(folder);
    write(place, "look", "session: finch-quarry-lane\nrange test: finch-ring-road");
    Work work = work(place, "look");
    assertThat(work.mebibytes()).as("MiB").isBetween(1L, MOST_MEBIBYTES);
    assertThat(work.classes()).as("classes").isBetween(1L, MOST_CLASSES);
    assertThat(pages("report.pdf") + pages("methods.pdf")).as("pages").isBetween(1, MOST_PAGES);
  }

  /** Reading, measuring, and drawing pass over the rows of a log a constant number of times. */
  @Test
  void a_further_row_of_a_day_takes_at_most_the_recorded_work() throws Exception {
    Workplace place = Workplace.withDemo(folder);
    long some = mebibytesOfLog(place, 20_000);
    long more = mebibytesOfLog(place, 40_000);
    assertThat(1024 * (more - some) / 20_000)
        .as("KiB per row")
        .isBetween(0L, MOST_KIBIBYTES_PER_ROW);
  }

  private long mebibytesOfLog(Workplace place, int rows) throws Exception {
    String name = "log-" + rows;
    log(place, name, rows);
    write(place, name, "session: " + name);
    return work(place, name).mebibytes();
  }

  private Work work(Workplace place, String report) throws Exception {
    Path collections = folder.resolve("collections.log");
    Path classes = folder.resolve("classes.log");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Xmn48m",
                "-Djava.awt.headless=true",
                "-Xlog:gc,gc+heap+exit=info:file=" + collections + "::filecount=0",
                "-Xlog:class+load=info:file=" + classes + "::filecount=0",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                "report",
                report,
                "--folder",
                folder.toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("output.log").toFile())
            .start();
    assertThat(process.waitFor(MINUTES, TimeUnit.MINUTES)).isTrue();
    assertThat(process.exitValue()).as(place.text("output.log")).isZero();
    return new Work(
        mebibytesAllocated(place.text("collections.log")),
        place.text("classes.log").lines().count());
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

  /** Writes a charge that takes 28 h, whose power falls linearly after a third of the time. */
  private static void log(Workplace place, String name, int rows) throws IOException {
    StringBuilder text = new StringBuilder("elapsed [s],soc [%],power [kW],energy added [kWh]\n");
    double energy = 0;
    for (int row = 0; row < rows; row++) {
      double hour = 28.0 * row / (rows - 1);
      double power = Math.min(10, 15 - 0.5 * hour);
      text.append(
          String.format(
              Locale.ROOT, "%.1f,%.2f,%.1f,%.3f\n", 3600 * hour, 10 + energy / 3, power, energy));
      energy += power * 28 / (rows - 1);
    }
    Files.createDirectories(place.path("sessions/" + name));
    Files.writeString(place.path("sessions/" + name + "/readings.csv"), text);
    Files.writeString(
        place.path("sessions/" + name + "/conditions.csv"),
        place
            .text("sessions/finch-quarry-lane/conditions.csv")
            .replace("usable energy,60,", "usable energy,300,")
            .replaceAll("(?m)^.* resolution,.*\n", ""));
  }

  private static void write(Workplace place, String name, String about) throws IOException {
    Files.writeString(
        place.path("reports/" + name + ".md"),
        """
        ---
        title: Work
        author: A test
        published: 2026-05-01
        """
            + about
            + """

            ---
            Invented.
            """);
  }
}
