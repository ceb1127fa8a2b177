package taperbook.cli;

import java.io.PrintStream;
import taperbook.diagnostics.Printable;
import taperbook.i18n.Texts;

/**
 * A progress line on a terminal, and a line every ten seconds elsewhere. A separate thread repaints
 * it so that the elapsed seconds advance; work of less than half a second shows nothing.
 */
final class ProgressLine {
  private static final String CLEAR_LINE = "\r\u001b[2K";
  private static final int BAR_WIDTH = 16;
  private static final long QUIET_NANOS = 500_000_000;
  private static final long REPAINT_MILLIS = 250;
  private static final long NANOS_PER_SECOND = 1_000_000_000;
  private static final long LOG_NANOS = 10 * NANOS_PER_SECOND;

  private final PrintStream err;
  private final Terminal terminal;
  private final WatchClock clock;
  private long startedNanos;
  private long loggedNanos;
  private boolean atWork;
  private String shown = "";
  private int done;
  private int all;
  private String name = "";
  private double share;
  private String step = "";

  ProgressLine(PrintStream err, Terminal terminal, WatchClock clock) {
    this.err = err;
    this.terminal = terminal;
    this.clock = clock;
  }

  /** Starts the work on one of several items. */
  synchronized void begin(int doneBefore, int total, String itemName) {
    done = doneBefore;
    all = total;
    name = itemName;
    step(0, Texts.of("command.progress_line.reading"));
    if (!atWork) {
      atWork = true;
      loggedNanos = 0;
      startedNanos = clock.nanoTime();
      Thread painter = new Thread(this::paintOn, "progress");
      painter.setDaemon(true);
      painter.start();
    }
  }

  /** Starts a step of it. */
  synchronized void step(double shareDone, String what) {
    share = shareDone;
    step = what;
  }

  /** Clears the line before a message. */
  synchronized void clear() {
    if (!shown.isEmpty()) {
      err.print(CLEAR_LINE);
      err.flush();
      shown = "";
    }
  }

  /** Ends the work. */
  synchronized void end() {
    clear();
    atWork = false;
    notifyAll();
  }

  private synchronized void paintOn() {
    try {
      while (atWork) {
        long nanos = clock.nanoTime() - startedNanos;
        if (!terminal.messages() && nanos - loggedNanos >= LOG_NANOS) {
          loggedNanos = nanos - nanos % LOG_NANOS;
          err.println(text(nanos / NANOS_PER_SECOND));
        } else if (terminal.messages() && nanos >= QUIET_NANOS) {
          show(line(nanos / NANOS_PER_SECOND));
        }
        wait(REPAINT_MILLIS);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Paints the line only if it has changed, to avoid flicker. */
  private void show(String line) {
    if (!line.equals(shown)) {
      err.print(CLEAR_LINE + line);
      err.flush();
      shown = line;
    }
  }

  /**
   * Returns the current line, one character shorter than the terminal's width.
   *
   * @param seconds time since the work began, s
   */
  synchronized String line(long seconds) {
    int filled = (int) (BAR_WIDTH * (done + share) / Math.max(1, all));
    String bar = "[" + "=".repeat(filled) + " ".repeat(BAR_WIDTH - filled) + "] ";
    String line = bar + text(seconds);
    return line.substring(0, Math.min(line.length(), terminal.width() - 1));
  }

  private String text(long seconds) {
    String position = all > 1 ? Texts.of("command.progress_line.of", done + 1, all) : "";
    return Printable.of(position + name + ": " + step + ", " + seconds + " s");
  }
}
