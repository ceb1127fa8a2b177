package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.cli.Command;
import taperbook.cli.Completion;
import taperbook.cli.ExitStatus;

/** Runs the completion scripts in their shells. */
final class CompletionTest {
  /** What bash does for the Tab key: sets these variables and calls the function. */
  private static final String PRESS =
      """
      . "$1"; cd "$2"; shift 2
      COMP_WORDS=(taperbook "$@"); COMP_CWORD=$#; _taperbook
      printf '%s\\n' "${COMPREPLY[@]}"
      """;

  @TempDir private Path folder = Path.of("");

  @Test
  void bash_completes_commands_options_and_their_values() throws Exception {
    assertThat(completed("")).containsExactly(words());
    assertThat(completed("re")).containsExactly("report");
    assertThat(completed("help", "w")).containsExactly("watch");
    assertThat(completed("blank", "sheet", "--p")).containsExactly("--paper");
    assertThat(completed("report", "--p")).isEmpty();
    assertThat(completed("blank", "sheet", "--units", "")).containsExactly("km", "mi");
    assertThat(completed("--units", "=", "m")).containsExactly("mi");
    assertThat(completed("completion", "")).containsExactly("bash", "zsh", "fish");
    assertThat(completed("--folder", "ses")).containsExactly("sessions");
  }

  @Test
  void bash_completes_the_names_in_the_folder() throws Exception {
    assertThat(completed("report", ""))
        .containsExactly("finch-first-look", "library", "veldt-long-plateau");
    assertThat(completed("watch", "library", "v")).containsExactly("veldt-long-plateau");
    assertThat(completed("blank", "report", "new", "v")).containsExactly("veldt-quarry-lane");
    assertThat(completed("blank", "report", "new", "veldt-quarry-lane", "v"))
        .containsExactly("veldt-ring-road");
    assertThat(completed("blank", "session", "")).isEmpty();
    assertThat(completed("report", "--folder", "nowhere", "")).isEmpty();
  }

  @Test
  void bash_completes_ids_and_sessions_of_a_built_report() throws Exception {
    Files.createDirectories(folder.resolve("reports/finch-first-look"));
    // In the format of numbers.json.
    Files.writeString(
        folder.resolve("reports/finch-first-look/numbers.json"),
        """
        {
          "numbers": [
            {
              "id": "peak_power",
              "session": "finch-quarry-lane"
            },
            {
              "id": "peak_power",
              "session": "finch-quarry-lane-first"
            },
            {
              "id": "start_soc",
              "session": "finch-quarry-lane"
            }
          ]
        }
        """);
    assertThat(completed("explain", "finch-first-look", ""))
        .containsExactly("peak_power", "start_soc");
    assertThat(completed("explain", "finch-first-look", "peak_power", ""))
        .containsExactly("finch-quarry-lane", "finch-quarry-lane-first");
    assertThat(completed("explain", "library", "")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"bash", "zsh", "fish"})
  void each_script_is_valid_in_its_shell(String shell) throws Exception {
    String script = Completion.script(shell);
    assertThat(script).doesNotContainPattern("@[A-Z]+@").contains(words());
    assumeTrue(exists(shell), shell + " is not installed");
    Files.writeString(folder.resolve("script"), script);
    assertThat(run(shell, "-n", folder.resolve("script").toString())).isEmpty();
  }

  @Test
  void fish_completes_names_of_reports() throws Exception {
    assumeTrue(exists("fish"), "fish is not installed");
    Workplace.withDemo(folder);
    Files.writeString(folder.resolve("script"), Completion.script("fish"));
    assertThat(
            run(
                "fish",
                "--no-config",
                "-c",
                "source "
                    + folder
                    + "/script; complete -C 'taperbook report --folder "
                    + folder
                    + " v'"))
        .isEqualTo("veldt-long-plateau\n");
  }

  @Test
  void another_shell_is_refused() {
    Workplace place = new Workplace(folder);
    assertThat(place.run("completion", "tcl")).isEqualTo(ExitStatus.WRONG_USAGE);
    assertThat(place.err()).contains("one of the words bash, zsh, fish");
    assertThat(place.run("completion", "bash")).isEqualTo(ExitStatus.DONE);
    assertThat(place.out()).isEqualTo(Completion.script("bash"));
  }

  private static String[] words() {
    return Stream.of(Command.values()).map(Command::word).toArray(String[]::new);
  }

  /** The suggestions of bash for the last of the given words after the program's name. */
  private List<String> completed(String... words) throws Exception {
    assumeTrue(exists("bash"), "bash is not installed");
    if (!Files.exists(folder.resolve("sessions"))) {
      Workplace.withDemo(folder);
    }
    Files.writeString(folder.resolve("script"), Completion.script("bash"));
    List<String> call = new ArrayList<>(List.of("bash", "--norc", "-c", PRESS, "bash"));
    call.add(folder.resolve("script").toString());
    call.add(folder.toString());
    call.addAll(List.of(words));
    return run(call.toArray(new String[0])).lines().filter(l -> !l.isEmpty()).toList();
  }

  private static boolean exists(String program) {
    return Stream.of(System.getenv().getOrDefault("PATH", "").split(":", -1))
        .anyMatch(dir -> Files.isExecutable(Path.of(dir, program)));
  }

  /** Output of a process. */
  private static String run(String... call) throws IOException, InterruptedException {
    Process process = new ProcessBuilder(call).redirectErrorStream(true).start();
    process.getOutputStream().close();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    process.waitFor();
    return output;
  }
}
