package taperbook.endtoend;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.ConcurrentLinkedDeque;
import taperbook.cli.WatchClock;

/**
 * Scripted time in which an action runs at each pause, without waiting; stops at the end of the
 * script.
 */
final class ScriptedClock implements WatchClock {
  /** Pauses without a change after which a change must have been processed. */
  private static final int IDLE_PAUSES = 4;

  /** The stopwatch is read twice for the detection of changes, and then at the start of a build. */
  private static final int READS_BEFORE_BUILD = 3;

  /** A change of the files. */
  interface Action {
    void run() throws IOException;
  }

  private final Deque<Action> pauses = new ArrayDeque<>();
  private Action duringBuild = () -> {};
  private final Deque<Action> uninterrupted = new ConcurrentLinkedDeque<>();
  private Runnable stopping = () -> {};
  private int reads;
  private long nanos;

  /** Runs an action in the next pause. */
  ScriptedClock then(Action action) {
    pauses.add(action);
    return this;
  }

  /** Adds pauses without an action. */
  ScriptedClock idle() {
    for (int i = 0; i < IDLE_PAUSES; i++) {
      pauses.add(() -> {});
    }
    return this;
  }

  /** Runs an action once, at the start of the next build. */
  ScriptedClock thenDuringBuild(Action action) {
    return then(() -> duringBuild = action);
  }

  /**
   * Runs an action once, before the next work that must not be interrupted: the page of a report is
   * shown, then the report is published or the page is taken back.
   */
  ScriptedClock thenBeforePublishing(Action action) {
    uninterrupted.add(action);
    return this;
  }

  @Override
  public boolean pause(long millis) {
    reads = 0;
    Action next = pauses.poll();
    if (next == null) {
      return false;
    }
    run(next);
    return true;
  }

  @Override
  public long nanoTime() {
    reads++;
    if (reads == READS_BEFORE_BUILD) {
      Action now = duringBuild;
      duringBuild = () -> {};
      run(now);
    }
    nanos += 1_000_000;
    return nanos;
  }

  @Override
  public void runUninterrupted(Runnable work) {
    Action now = uninterrupted.poll();
    if (now != null) {
      run(now);
    }
    work.run();
  }

  @Override
  public void onStop(Runnable cleanup) {
    stopping = cleanup;
  }

  /** Does what a stop of the process does at this moment. */
  void stop() {
    stopping.run();
  }

  private static void run(Action action) {
    try {
      action.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
