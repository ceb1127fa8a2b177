package taperbook.endtoend;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.Deque;
import taperbook.cli.WatchClock;

/** Time in which something happens at each pause, without a wait; it stops when the script ends. */
final class ScriptedClock implements WatchClock {
  /** Pauses without a change after which a change must have been taken up. */
  private static final int IDLE_PAUSES = 4;

  /** The stopwatch is read twice to look at the files, and then as making a report begins. */
  private static final int READS_BEFORE_BUILD = 3;

  /** Something that happens to the files. */
  interface Action {
    void run() throws IOException;
  }

  private final Deque<Action> pauses = new ArrayDeque<>();
  private Action duringBuild = () -> {};
  private Action beforePublishing = () -> {};
  private int reads;
  private long nanos;

  /** Something happens in the next pause. */
  ScriptedClock then(Action action) {
    pauses.add(action);
    return this;
  }

  /** Nothing happens for long enough. */
  ScriptedClock idle() {
    for (int i = 0; i < IDLE_PAUSES; i++) {
      pauses.add(() -> {});
    }
    return this;
  }

  /** Something happens once, just as the first report after it is being made. */
  ScriptedClock thenDuringBuild(Action action) {
    return then(() -> duringBuild = action);
  }

  /** Something happens once, just before the first report is published. */
  ScriptedClock thenBeforePublishing(Action action) {
    beforePublishing = action;
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
    Action now = beforePublishing;
    beforePublishing = () -> {};
    run(now);
    work.run();
  }

  private static void run(Action action) {
    try {
      action.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
