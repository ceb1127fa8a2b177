package taperbook.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import taperbook.cli.ExitStatus;
import taperbook.endtoend.ManySessions;
import taperbook.endtoend.Workplace;
import taperbook.plan.LibraryPlan;
import taperbook.result.LibraryResult;
import taperbook.session.InputHash;
import taperbook.workspace.Project;
import taperbook.workspace.VisitedSession;

/** Compares libraries built with and without cached rows. */
@Tag("slow")
final class RowCacheTest {
  private static final String ROWS = "reports/.library.rows";
  private static final String READINGS = "sessions/visit-0001/readings.csv";

  @TempDir private Path folder = Path.of("");

  @Test
  void a_library_is_the_same_with_valid_missing_and_corrupt_caches() throws IOException {
    Workplace place = ManySessions.write(folder, 6);
    assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
    byte[] rows = Files.readAllBytes(place.path(ROWS));
    place.replace(READINGS, "\n60,", "\n61,");
    SortedMap<String, String> known = rebuilt(place);
    Files.delete(place.path(ROWS));
    assertThat(rebuilt(place).equals(known)).isTrue();
    for (int at : List.of(0, 40, rows.length / 2, rows.length - 1)) {
      byte[] broken = rows.clone();
      broken[at] ^= 0x20;
      Files.write(place.path(ROWS), broken);
      assertThat(rebuilt(place).equals(known)).as("broken at " + at).isTrue();
    }
    Files.write(place.path(ROWS), new byte[0]);
    assertThat(rebuilt(place).equals(known)).isTrue();
  }

  private static SortedMap<String, String> rebuilt(Workplace place) throws IOException {
    Files.deleteIfExists(place.path("reports/library/report.html"));
    assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(place.out()).contains("made: reports/library/");
    return place.files("reports/library");
  }

  @Test
  void only_changed_sessions_are_measured_again_and_cached_rows_equal_measured_rows()
      throws IOException {
    Workplace place = ManySessions.write(folder, 8);
    LibraryResult fresh = result(8);
    assertThat(result(0)).usingRecursiveComparison().isEqualTo(fresh);
    place.replace(READINGS, "\n60,", "\n61,");
    LibraryResult changed = result(1);
    assertThat(changed.rows().get(0).numbers().all()).isNotEmpty();
    assertThat(result(0)).usingRecursiveComparison().isEqualTo(changed);
    // A change of the plan or of the drive invalidates the rows.
    place.replace("reports/library.md", "30-70", "30-60");
    result(8);
    place.replace("sessions/drive-0/range-test.csv", "end soc,5", "end soc,6");
    result(8);
    Files.delete(folder.resolve(READINGS));
    result(0);
  }

  @Test
  void a_session_with_problems_is_not_cached() throws IOException {
    Workplace place = ManySessions.write(folder, 3);
    place.replace(READINGS, "soc [%],", "soc [%],odd thing,");
    Files.writeString(
        place.path(READINGS), place.text(READINGS).replaceAll("(?m)^([0-9]+,[0-9]+),", "$1,,"));
    result(3);
    result(1);
  }

  /**
   * Returns the result, of which the given number of rows must be measured and not read from the
   * cache.
   */
  private LibraryResult result(int expectedMeasured) {
    CommandContext commandContext = CommandContext.in(folder, Map.of());
    Project project = commandContext.project();
    LibraryPlan plan = (LibraryPlan) project.plan("library").value().orElseThrow();
    LibraryIntake intake = LibraryIntake.withoutArticle(plan);
    project.rangeTestNames().forEach(n -> intake.rangeTest(n, project.visitRangeTest(n)));
    List<InputHash> tests = new ArrayList<>(intake.inputs());
    intake.remember(commandContext.memory(plan, tests));
    AtomicInteger measured = new AtomicInteger();
    OrderedExecutor.each(
        project.sessionNames(),
        name -> {
          var visited = project.visitSession(name);
          return intake.measured(
              name,
              new VisitedSession<>(
                  () -> {
                    measured.incrementAndGet();
                    return visited.value();
                  },
                  visited.files(),
                  visited.hashes()));
        },
        intake::take);
    intake.keepRows();
    assertThat(measured.get()).isEqualTo(expectedMeasured);
    return intake.result();
  }
}
