package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
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

  @TempDir private Path folder = Path.of("");

  @Test
  void a_report_of_one_session_allocates_at_most_twice_the_recorded_amount() throws IOException {
    Workplace place = Workplace.withDemo(folder);
    write(place, "first");
    write(place, "second");
    assertThat(place.run("report", "first")).as(place.err()).isEqualTo(ExitStatus.DONE);
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadAllocatedBytes();
    assertThat(place.run("report", "second")).as(place.err()).isEqualTo(ExitStatus.DONE);
    long allocated = threads.getCurrentThreadAllocatedBytes() - before;
    assertThat(allocated / MILLION).as("million bytes").isBetween(1L, LIMIT_MILLION_BYTES);
  }

  private static void write(Workplace place, String name) throws IOException {
    Files.writeString(
        place.path("reports/" + name + ".md"),
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
  }
}
