package taperbook.endtoend;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.Deque;
import taperbook.cli.WatchClock;

/** Time in which something happens at each pause, without a wait; it stops when the script ends. */
final class ScriptedPulse implements WatchClock {
  /** Pauses without a change after which a change must have been taken up. */
  private static final int STILL = 4;

  /** The stopwatch is read twice to look at the files, and then as making a report begins. */
  private static final int READS_BEFORE_MAKING = 3;

  /** Something that happens to the files. */
  interface Happening {
    void happen() throws IOException;
  }

  private final Deque<Happening> pauses = new ArrayDeque<>();
  private Happening whileMaking = () -> {};
  private Happening beforePublishing = () -> {};
  private int reads;
  private long nanos;

  /** Something happens in the next pause. */
  ScriptedPulse then(Happening happening) {
    pauses.add(happening);
    return this;
  }

  /** Nothing happens for long enough. */
  ScriptedPulse still() {
    for (int i = 0; i < STILL; i++) {
      pauses.add(() -> {});
    }
    return this;
  }

  /** Something happens once, just as the first report after it is being made. */
  ScriptedPulse thenWhileMaking(Happening happening) {
    return then(() -> whileMaking = happening);
  }

  /** Something happens once, just before the first report is published. */
  ScriptedPulse thenBeforePublishing(Happening happening) {
    beforePublishing = happening;
    return this;
  }

  @Override
  public boolean pause(long millis) {
    reads = 0;
    Happening next = pauses.poll();
    if (next == null) {
      return false;
    }
    happen(next);
    return true;
  }

  @Override
  public long nanoTime() {
    reads++;
    if (reads == READS_BEFORE_MAKING) {
      Happening now = whileMaking;
      whileMaking = () -> {};
      happen(now);
    }
    nanos += 1_000_000;
    return nanos;
  }

  @Override
  public void runUninterrupted(Runnable work) {
    Happening now = beforePublishing;
    beforePublishing = () -> {};
    happen(now);
    work.run();
  }

  private static void happen(Happening happening) {
    try {
      happening.happen();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
