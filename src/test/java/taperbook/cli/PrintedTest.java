package taperbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.SourceLocation;

/** No external text reaches the terminal with control codes, by any printing method. */
final class PrintedTest {
  private static final String HOSTILE =
      "a\u001b[2J\u001b]0;x\u0007\r\nverified\u009b\u202eb\u200bc";
  private static final String SHOWN =
      "a\\u001b[2J\\u001b]0;x\\u0007\\u000d\\u000averified\\u009b\\u202eb\\u200bc";

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final PrintStream stream = new PrintStream(bytes, true, StandardCharsets.UTF_8);

  @Test
  void every_printing_method_escapes_control_codes() {
    Terminal terminal = new Terminal(true, true, 120);
    Messages messages =
        new Messages(
            stream,
            stream,
            new ProcessContext(Map.of("NO_COLOR", "1"), terminal, WatchClock.ofProcess()));
    SourceLocation place = SourceLocation.file(HOSTILE);
    List<Runnable> ways =
        List.of(
            () -> messages.result(HOSTILE),
            () -> messages.text(HOSTILE.replace("\n", "")),
            () -> messages.outcome(HOSTILE, "done"),
            () -> messages.outcome("name", "refused " + HOSTILE),
            () -> messages.problems(List.of(problem(place, "found", "right"))),
            () -> messages.problems(List.of(problem(SourceLocation.file("f"), HOSTILE, "right"))),
            () -> messages.problems(List.of(problem(SourceLocation.file("f"), "found", HOSTILE))),
            () -> messages.remark(HOSTILE),
            () -> messages.stopped(HOSTILE),
            () -> messages.programFailed(new IllegalStateException(HOSTILE)),
            () -> messages.programFailed(new IllegalStateException("x", new Exception(HOSTILE))));
    for (Runnable way : ways) {
      bytes.reset();
      way.run();
      String printed = bytes.toString(StandardCharsets.UTF_8);
      assertThat(printed.replace("\\u000a", "")).contains(SHOWN.replace("\\u000a", ""));
      assertThat(printed).doesNotContainPattern("[\\p{Cntrl}&&[^\n]]|\\p{Cf}");
    }
  }

  @Test
  void the_progress_line_escapes_control_codes() {
    ProgressLine progress =
        new ProgressLine(stream, new Terminal(false, false, 120), WatchClock.ofProcess());
    progress.begin(0, 1, HOSTILE);
    assertThat(progress.line(1)).contains(SHOWN).doesNotContainPattern("\\p{Cntrl}|\\p{Cf}");
  }

  private static Problem problem(SourceLocation place, String found, String expected) {
    return new Problem(ProblemCode.FILE_UNREADABLE, place, found, expected, expected);
  }
}
