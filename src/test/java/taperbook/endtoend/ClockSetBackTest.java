package taperbook.endtoend;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.Date;
import java.util.List;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import taperbook.cli.ExitStatus;

/**
 * Only content determines whether a report is up to date. A clock that was set back, which leaves
 * files with times in the future, has no effect; neither do files with times in the past.
 */
@Tag("slow")
final class ClockSetBackTest {
  private static final String READINGS = "sessions/stop/readings.csv";
  private static final Instant FUTURE = Instant.parse("2099-01-01T00:00:00Z");
  private static final Instant PAST = Instant.parse("1980-01-01T00:00:00Z");

  @TempDir private Path folder = Path.of("");
  private Workplace place = new Workplace(folder);

  @BeforeEach
  void buildDemo() throws IOException {
    place = new Workplace(folder);
    for (String path : FuzzProject.valid().paths()) {
      Files.createDirectories(place.path(path).resolve(".."));
      Files.write(place.path(path), FuzzProject.valid().bytes(path));
    }
    assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
  }

  @Test
  void file_times_cause_no_rebuild() throws IOException {
    SortedMap<String, String> built = place.files("reports/look");
    for (Instant inputs : List.of(FUTURE, PAST)) {
      date("sessions", inputs);
      date("reports", inputs.equals(PAST) ? FUTURE : PAST);
      assertThat(place.run("report")).isEqualTo(ExitStatus.DONE);
      assertThat(place.out()).contains("look  up to date");
    }
    assertThat(place.files("reports/look")).isEqualTo(built);
  }

  @Test
  void a_change_is_detected_although_its_time_precedes_the_output() throws IOException {
    date("reports", FUTURE);
    place.replace(READINGS, "7:30,40,130,", "7:30,40,131,");
    Files.setLastModifiedTime(place.path(READINGS), FileTime.from(PAST));
    assertThat(place.run("report")).isEqualTo(ExitStatus.DONE);
    assertThat(place.out()).contains("look  made");
    place.replace(READINGS, "7:30,40,131,", "7:30,40,130,");
    Files.setLastModifiedTime(place.path(READINGS), FileTime.from(PAST));
    assertThat(place.run("report")).isEqualTo(ExitStatus.DONE);
    assertThat(place.out()).contains("look  made");
  }

  @Test
  void output_does_not_depend_on_file_times() throws IOException {
    SortedMap<String, String> built = place.files("reports/look");
    date("sessions", FUTURE);
    date("reports", FUTURE);
    Files.delete(place.path("reports/look/report.pdf"));
    assertThat(place.run("report")).isEqualTo(ExitStatus.DONE);
    assertThat(place.out()).contains("look  made");
    assertThat(place.files("reports/look")).isEqualTo(built);
  }

  @Test
  void watch_detects_a_save_that_sets_the_time_back() {
    ScriptedClock script =
        new ScriptedClock()
            .idle()
            .then(
                () -> {
                  place.replace(READINGS, "7:30,40,130,", "7:30,40,131,");
                  Files.setLastModifiedTime(place.path(READINGS), FileTime.from(PAST));
                })
            .idle();
    assertThat(place.run(script, "watch")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(place.out()).containsOnlyOnce("look  made");
  }

  /** Only {@code watch} has a stopwatch, which is independent of the wall clock. */
  @Test
  void the_program_does_not_read_the_time_of_day() {
    noClasses()
        .should()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(Instant.class, "now")
        .orShould()
        .callMethod(LocalDate.class, "now")
        .orShould()
        .callMethod(LocalDateTime.class, "now")
        .orShould()
        .callMethod(ZonedDateTime.class, "now")
        .orShould()
        .callConstructor(Date.class)
        .orShould()
        .dependOnClassesThat()
        .areAssignableTo(Clock.class)
        .check(
            new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("taperbook"));
  }

  private void date(String below, Instant time) throws IOException {
    try (Stream<Path> all = Files.walk(place.path(below))) {
      for (Path file : all.toList()) {
        Files.setLastModifiedTime(file, FileTime.from(time));
      }
    }
  }
}
