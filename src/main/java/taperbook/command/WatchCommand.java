package taperbook.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import taperbook.build.CommandContext;
import taperbook.cli.ExitStatus;
import taperbook.cli.Messages;
import taperbook.cli.ProcessContext;
import taperbook.cli.Request;
import taperbook.cli.WatchClock;
import taperbook.i18n.Texts;
import taperbook.workspace.Snapshot;
import taperbook.workspace.StoppedException;

/**
 * Rebuilds reports whenever one of their source files is saved. It polls the size and time of the
 * files, which detects every way of saving on every file system, waits until they have not changed
 * for a while, and publishes nothing that was built while a file changed.
 */
public final class WatchCommand {
  private static final long PAUSE_MILLIS = 50;

  /** Pause while a changed file may still be written. */
  private static final long SHORT_PAUSE_MILLIS = 15;

  private static final long LONGEST_PAUSE_MILLIS = 2000;

  /** Polling takes at most a tenth of the time. */
  private static final long PAUSES_PER_LOOK = 10;

  private static final int STILL_LOOKS = 3;
  private static final long NANOS_PER_MILLI = 1_000_000;

  private final Messages messages;
  private final ProcessContext processContext;
  private final WatchClock clock;

  public WatchCommand(Messages messages, ProcessContext processContext) {
    this.messages = messages;
    this.processContext = processContext;
    this.clock = processContext.clock();
  }

  public ExitStatus run(Request request) {
    if (!Files.isDirectory(request.folder().toAbsolutePath())) {
      throw new StoppedException(
          Texts.of("command.watch_command.there_is_no_folder", request.folder()));
    }
    List<String> reports =
        CommandContext.in(request.folder(), processContext.environment()).project().reportNames();
    for (String name : request.names()) {
      if (!reports.contains(name)) {
        throw ExplainCommand.unknown(Texts.of("command.common.there_is_no_report"), name, reports);
      }
    }
    WatchRound round = new WatchRound(messages, processContext, request);
    messages.remark(Texts.of("command.watch_command.watching_sessions_reports_md_and"));
    long pauseMillis = PAUSE_MILLIS;
    int still = 0;
    Snapshot last = Snapshot.of(request.folder());
    boolean due = true;
    while (clock.pause(pauseMillis)) {
      long started = clock.nanoTime();
      Snapshot now = Snapshot.of(request.folder());
      long pollNanos = clock.nanoTime() - started;
      still = now.equals(last) ? still + 1 : 0;
      due |= still == 0;
      last = now;
      if (due && still >= STILL_LOOKS) {
        due = !made(round, request.folder(), now);
      }
      pauseMillis = pauseAfter(pollNanos, due ? SHORT_PAUSE_MILLIS : PAUSE_MILLIS);
    }
    return ExitStatus.DONE;
  }

  private static long pauseAfter(long pollNanos, long leastMillis) {
    return Math.min(
        LONGEST_PAUSE_MILLIS, Math.max(leastMillis, PAUSES_PER_LOOK * pollNanos / NANOS_PER_MILLI));
  }

  /** Returns false if a file changed in the meantime, so that another poll is needed. */
  private boolean made(WatchRound round, Path folder, Snapshot before) {
    try {
      return round.make(() -> Snapshot.of(folder).equals(before));
    } catch (StoppedException e) {
      messages.stopped(e.getMessage());
      return true;
    } finally {
      messages.flush();
    }
  }
}
