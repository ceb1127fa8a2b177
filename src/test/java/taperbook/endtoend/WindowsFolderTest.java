package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import taperbook.cli.Command;
import taperbook.cli.ExitStatus;
import taperbook.cli.Messages;
import taperbook.cli.ProcessContext;
import taperbook.cli.Request;
import taperbook.cli.Terminal;
import taperbook.cli.WatchClock;
import taperbook.command.CheckCommand;
import taperbook.command.ReportCommand;

/**
 * A project on a file system like that of Windows: with {@code \} and without case, POSIX modes and
 * status of files. It is in memory, so that nothing is open elsewhere.
 */
@Tag("slow")
final class WindowsFolderTest {
  private static final Path INPUT = Path.of("src/test/resources/golden/by-hand/input");

  private final FileSystem windows = Jimfs.newFileSystem(Configuration.windows());
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private Path folder = windows.getPath("C:\\work\\cars");

  @AfterEach
  void close() throws IOException {
    windows.close();
  }

  private Messages messages(ProcessContext context) {
    out.reset();
    err.reset();
    return new Messages(
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8),
        context);
  }

  private static ProcessContext context() {
    return new ProcessContext(Map.of(), Terminal.NONE, WatchClock.ofProcess());
  }

  private ExitStatus report(String... names) {
    return new ReportCommand(messages(context()), context())
        .run(new Request(Command.REPORT, List.of(names), folder, Map.of()));
  }

  private ExitStatus check() {
    return new CheckCommand(messages(context()), context())
        .run(new Request(Command.CHECK, List.of(), folder, Map.of()));
  }

  private void rename(String from, String to) throws IOException {
    Path file = folder.resolve(from);
    Path between = file.resolveSibling("between");
    Files.move(file, between);
    Files.move(between, file.resolveSibling(to));
  }

  private String printed(ByteArrayOutputStream stream) {
    return stream.toString(StandardCharsets.UTF_8);
  }

  @Test
  void a_report_has_the_same_bytes_and_messages_as_on_linux(@TempDir Path linux)
      throws IOException {
    Workplace.copy(INPUT, folder);
    Workplace.copy(INPUT, linux);
    Workplace place = new Workplace(linux);
    assertThat(place.run("report")).isEqualTo(ExitStatus.DONE);
    assertThat(report()).as(printed(err)).isEqualTo(ExitStatus.DONE);
    assertThat(printed(out)).isEqualTo(place.out().replace(linux.toString(), "C:/work/cars"));
    assertThat(printed(err)).isEmpty();
    for (String file : place.files("reports/wren").keySet()) {
      assertThat(folder.resolve("reports").resolve("wren").resolve(file))
          .as(file)
          .hasSameBinaryContentAs(linux.resolve("reports/wren").resolve(file));
    }
    assertThat(folder.resolve("reports"))
        .isDirectoryNotContaining(p -> !String.valueOf(p.getFileName()).startsWith("wren"));

    Files.createDirectory(folder.resolve("reports/wren/own"));
    Files.writeString(folder.resolve("reports/wren/own/photo.png"), "own");
    Path session = folder.resolve("sessions/wren-mill-street/readings.csv");
    Files.writeString(session, Files.readString(session).replace("\n", "\r\n"));
    assertThat(report()).as(printed(err)).isEqualTo(ExitStatus.DONE);
    assertThat(printed(out)).contains("no number moved");
    assertThat(folder.resolve("reports/wren/own/photo.png")).hasContent("own");
    assertThat(report()).isEqualTo(ExitStatus.DONE);
    assertThat(printed(out)).isEqualTo("wren  up to date\n");
  }

  @Test
  void a_name_in_another_case_is_not_found_as_on_linux() throws IOException {
    Workplace.copy(INPUT, folder);
    assertThat(report("Wren")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(printed(err))
        .contains("error  reports/Wren.md\n    found     only wren.md in its folder\n");
    assertThat(folder.resolve("reports/wren")).doesNotExist();

    rename("sessions/wren-mill-street-cold", "Wren-mill-street-cold");
    assertThat(check()).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(printed(err))
        .contains("reports/wren.md:6", "\"wren-mill-street-cold\"", "Wren-mill-street-cold");
    rename("sessions/Wren-mill-street-cold", "wren-mill-street-cold");

    rename("sessions/wren-mill-street/readings.csv", "Readings.csv");
    rename("sessions/wren-mill-street-cold/conditions.csv", "Conditions.CSV");
    assertThat(check()).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(printed(err))
        .contains("found     sessions/wren-mill-street with Readings.csv, conditions.csv\n")
        .contains("found     only Conditions.CSV, readings.csv in its folder\n");

    rename("sessions", "Sessions");
    assertThat(check()).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(printed(err)).contains("found     no folder sessions\n");
  }

  @Test
  void a_path_that_other_programs_cannot_open_is_remarked_on() throws IOException {
    String longest = "\\reports\\wren\\data\\wren-mill-street-cold\\conditions.csv";
    folder = windows.getPath("C:\\" + "d".repeat(259 - 3 - longest.length()));
    Workplace.copy(INPUT, folder);
    assertThat(report()).as(printed(err)).isEqualTo(ExitStatus.DONE);
    assertThat(printed(err)).isEmpty();

    folder = windows.getPath(folder + "d");
    Workplace.copy(INPUT, folder);
    assertThat(report()).as(printed(err)).isEqualTo(ExitStatus.DONE);
    assertThat(printed(err))
        .contains("Most programs of Windows cannot open paths of more than 259 characters")
        .contains("/reports/wren/data/wren-mill-street-cold/conditions.csv. Move the project");
  }
}
