package taperbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

final class BoundedTaskTest {
  private static final long PLENTY = Long.MAX_VALUE;
  private static final int MEBIBYTE = 1 << 20;

  @Test
  void a_task_within_its_bounds_returns_its_result() throws BoundedTask.TooMuch {
    assertThat(BoundedTask.within(60, PLENTY, () -> "done")).isEqualTo("done");
  }

  @Test
  void a_task_that_exceeds_its_time_is_interrupted_and_abandoned() throws InterruptedException {
    CountDownLatch interrupted = new CountDownLatch(1);
    assertThatThrownBy(
            () ->
                BoundedTask.within(
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
        .isInstanceOf(BoundedTask.TooMuch.class)
        .hasMessage("1 second");
    interrupted.await();
  }

  @Test
  void a_task_that_exceeds_its_memory_is_abandoned() {
    Runtime runtime = Runtime.getRuntime();
    System.gc();
    long bound = runtime.totalMemory() - runtime.freeMemory() + 64L * MEBIBYTE;
    assertThatThrownBy(
            () ->
                BoundedTask.within(
                    60,
                    bound,
                    () -> {
                      List<byte[]> kept = new ArrayList<>();
                      while (!Thread.currentThread().isInterrupted() && kept.size() < 600) {
                        kept.add(new byte[MEBIBYTE]);
                      }
                      while (!Thread.currentThread().isInterrupted()) {
                        Thread.onSpinWait();
                      }
                      return kept;
                    }))
        .isInstanceOf(BoundedTask.TooMuch.class)
        .hasMessageEndingWith(" MiB of memory");
  }

  @Test
  void exceptions_of_the_task_are_rethrown() {
    assertThatThrownBy(
            () ->
                BoundedTask.within(
                    60,
                    PLENTY,
                    () -> {
                      throw new IllegalArgumentException("seven");
                    }))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("seven");
    assertThatThrownBy(
            () ->
                BoundedTask.within(
                    60,
                    PLENTY,
                    () -> {
                      throw new StackOverflowError();
                    }))
        .isInstanceOf(StackOverflowError.class);
  }
}
