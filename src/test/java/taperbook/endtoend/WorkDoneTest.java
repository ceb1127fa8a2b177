package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import taperbook.cli.ExitStatus;

/**
 * Amount of work of a report, counted and not timed, so that the test does not depend on the load
 * of the machine. The limits are twice the count on Java 17 in November 2026; they are not an
 * external reference and may be changed deliberately.
 */
@Tag("slow")
final class WorkDoneTest {
  private static final long MILLION = 1_000_000;
  private static final long LIMIT_MILLION_BYTES = 960;
  private static final long LIMIT_BYTES_PER_ROW = 50_000;

  @TempDir private Path folder = Path.of("");

  @Test
  void a_report_of_one_session_allocates_at_most_twice_the_recorded_amount() throws IOException {
    Workplace place = Workplace.withDemo(folder);
    write(place, "first", "session: finch-quarry-lane\nrange test: finch-ring-road");
    write(place, "second", "session: finch-quarry-lane\nrange test: finch-ring-road");
    allocated(place, "first");
    assertThat(allocated(place, "second") / MILLION)
        .as("million bytes")
        .isBetween(1L, LIMIT_MILLION_BYTES);
  }

  /** Reading, measuring, and drawing pass over the rows of a log a constant number of times. */
  @Test
  void a_further_row_of_a_day_allocates_at_most_twice_the_recorded_amount() throws IOException {
    Workplace place = Workplace.withDemo(folder);
    allocatedByLog(place, 1_000);
    long some = allocatedByLog(place, 20_000);
    long more = allocatedByLog(place, 40_000);
    assertThat((more - some) / 20_000).as("bytes per row").isBetween(1L, LIMIT_BYTES_PER_ROW);
  }

  private static long allocatedByLog(Workplace place, int rows) throws IOException {
    String name = "log-" + rows;
    log(place, name, rows);
    write(place, name, "session: " + name);
    return allocated(place, name);
  }

  /** Returns the bytes that this thread allocates; others lay out pages and paint pictures. */
  private static long allocated(Workplace place, String report) {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadAllocatedBytes();
    assertThat(place.run("report", report)).as(place.err()).isEqualTo(ExitStatus.DONE);
    return threads.getCurrentThreadAllocatedBytes() - before;
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
