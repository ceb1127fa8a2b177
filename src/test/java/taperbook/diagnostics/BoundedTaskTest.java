package taperbook.diagnostics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

final class BoundedTaskTest {
  private static final long PLENTY = BoundedTask.ANY_MEMORY;
  private static final int MEBIBYTE = 1 << 20;

  @Test
  void a_task_within_its_bounds_returns_its_result() throws BoundedTask.LimitExceeded {
    assertThat(within(60, PLENTY, () -> "done")).isEqualTo("done");
  }

  @Test
  void a_task_that_exceeds_its_time_is_interrupted_and_abandoned() throws InterruptedException {
    CountDownLatch interrupted = new CountDownLatch(1);
    assertThatThrownBy(
            () ->
                within(
                    1,
                    PLENTY,
                    () -> {
                      try {
                        new CountDownLatch(1).await();
                        return "never";
                      } catch (InterruptedException e) {
                        interrupted.countDown();
                        return "asked to end";
                      }
                    }))
        .isInstanceOf(BoundedTask.LimitExceeded.class)
        .hasMessage("1 second");
    interrupted.await();
  }

  @Test
  void a_task_that_exceeds_its_memory_is_abandoned() {
    assertThatThrownBy(() -> within(60, 64L * MEBIBYTE, () -> allocate(600)))
        .isInstanceOf(BoundedTask.LimitExceeded.class)
        .hasMessage("64 MiB of memory");
  }

  @Test
  void memory_in_use_before_the_task_does_not_count() throws BoundedTask.LimitExceeded {
    List<byte[]> before = blocks(128);

    assertThat(
            within(
                60,
                64L * MEBIBYTE,
                () -> {
                  List<byte[]> added = blocks(16);
                  sleep();
                  return added;
                }))
        .hasSize(16);
    assertThat(before).hasSize(128);
  }

  @Test
  void exceptions_of_the_task_are_rethrown() {
    assertThatThrownBy(
            () ->
                within(
                    60,
                    PLENTY,
                    () -> {
                      throw new IllegalArgumentException("seven");
                    }))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("seven");
    assertThatThrownBy(
            () ->
                within(
                    60,
                    PLENTY,
                    () -> {
                      throw new IOException("eight");
                    }))
        .isInstanceOf(IOException.class)
        .hasMessage("eight");
    assertThatThrownBy(
            () ->
                within(
                    60,
                    PLENTY,
                    () -> {
                      throw new StackOverflowError();
                    }))
        .isInstanceOf(StackOverflowError.class);
  }

  private static <T, E extends Exception> T within(
      int seconds, long bytes, BoundedTask.Work<T, E> work) throws BoundedTask.LimitExceeded, E {
    return BoundedTask.within(seconds, bytes, Thread::new, work);
  }

  /** Allocates blocks until it is interrupted. */
  private static List<byte[]> allocate(int mebibytes) {
    List<byte[]> kept = new ArrayList<>();
    while (!Thread.currentThread().isInterrupted()) {
      if (kept.size() < mebibytes) {
        kept.add(new byte[MEBIBYTE]);
      }
      Thread.onSpinWait();
    }
    return kept;
  }

  private static List<byte[]> blocks(int mebibytes) {
    return Stream.generate(() -> new byte[MEBIBYTE]).limit(mebibytes).toList();
  }

  /** Waits until the memory in use has been looked at several times. */
  private static void sleep() {
    try {
      Thread.sleep(200);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
