package taperbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

final class ProgressLineTest {
  private static final Terminal NARROW = new Terminal(true, true, 40);

  private final CountDownLatch painted = new CountDownLatch(2);
  private final ByteArrayOutputStream bytes =
      new ByteArrayOutputStream() {
        @Override
        public void flush() {
          painted.countDown();
        }
      };
  private final PrintStream err = new PrintStream(bytes, false, StandardCharsets.UTF_8);

  /** Returns a stopwatch that advances by a constant time with each call. */
  private static WatchClock advancing(long nanosPerCall) {
    return new WatchClock() {
      private long nanos;

      @Override
      public boolean pause(long millis) {
        return false;
      }

      @Override
      public synchronized long nanoTime() {
        nanos += nanosPerCall;
        return nanos;
      }

      @Override
      public void runUninterrupted(Runnable work) {
        work.run();
      }
    };
  }

  @Test
  void the_line_has_bar_position_name_step_and_seconds_and_fits() {
    ProgressLine progress = new ProgressLine(err, new Terminal(true, true, 100), advancing(0));
    progress.begin(1, 4, "finch-first-look");
    progress.step(0.5, "measuring");
    assertThat(progress.line(7))
        .isEqualTo("[======          ] 2 of 4  finch-first-look: measuring, 7 s");
    progress.end();
    ProgressLine narrow = new ProgressLine(err, NARROW, advancing(0));
    narrow.begin(0, 1, "a-report-with-a-long-name");
    assertThat(narrow.line(1)).isEqualTo("[                ] a-report-with-a-long");
    narrow.end();
  }

  @Test
  void progress_of_long_work_is_printed_and_cleared_at_the_end() throws InterruptedException {
    ProgressLine progress = new ProgressLine(err, NARROW, advancing(1_000_000_000));
    progress.begin(0, 1, "it");
    assertThat(painted.await(20, TimeUnit.SECONDS)).isTrue();
    progress.end();
    String printed = bytes.toString(StandardCharsets.UTF_8);
    assertThat(printed).contains("it: reading, 1 s").endsWith("\r\u001b[2K");
  }

  @Test
  void long_work_prints_a_line_every_ten_seconds_in_a_pipe() throws InterruptedException {
    CountDownLatch lines = new CountDownLatch(2);
    PrintStream pipe =
        new PrintStream(bytes, false, StandardCharsets.UTF_8) {
          @Override
          public void println(String line) {
            super.println(line);
            lines.countDown();
          }
        };
    ProgressLine piped = new ProgressLine(pipe, Terminal.NONE, advancing(5_000_000_000L));
    piped.begin(11, 200, "finch");
    piped.step(0.5, "measuring");
    assertThat(lines.await(20, TimeUnit.SECONDS)).isTrue();
    piped.end();
    assertThat(bytes.toString(StandardCharsets.UTF_8).lines())
        .startsWith("12 of 200  finch: measuring, 10 s", "12 of 200  finch: measuring, 20 s");
  }

  @Test
  void short_work_prints_nothing() throws InterruptedException {
    ProgressLine brief = new ProgressLine(err, NARROW, advancing(1000));
    brief.begin(0, 1, "it");
    assertThat(painted.await(400, TimeUnit.MILLISECONDS)).isFalse();
    brief.end();
    ProgressLine piped = new ProgressLine(err, Terminal.NONE, advancing(1_000_000));
    piped.begin(0, 1, "it");
    assertThat(painted.await(400, TimeUnit.MILLISECONDS)).isFalse();
    piped.end();
    assertThat(bytes.toByteArray()).isEmpty();
  }
}
