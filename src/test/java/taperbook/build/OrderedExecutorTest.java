package taperbook.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class OrderedExecutorTest {
  @Test
  void results_keep_the_order_of_the_items_and_few_are_in_progress() {
    AtomicInteger underWay = new AtomicInteger();
    AtomicInteger most = new AtomicInteger();
    List<Integer> taken = new ArrayList<>();
    List<Integer> items = IntStream.range(0, 500).boxed().toList();
    OrderedExecutor.each(
        items,
        item -> {
          most.accumulateAndGet(underWay.incrementAndGet(), Math::max);
          double busy = 0;
          for (int i = 0; i < item % 7 * 1000; i++) {
            busy += Math.sqrt(i);
          }
          return busy < 0 ? -1 : item * item;
        },
        square -> {
          underWay.decrementAndGet();
          taken.add(square);
        });
    assertThat(taken).isEqualTo(items.stream().map(i -> i * i).toList());
    assertThat(most.get()).isLessThanOrEqualTo(3 * Runtime.getRuntime().availableProcessors() + 1);
  }

  @Test
  void exceptions_of_tasks_reach_the_caller_unchanged() {
    OutOfMemoryError failure = new OutOfMemoryError("for the test");
    assertThatThrownBy(
            () ->
                OrderedExecutor.each(
                    List.of(1, 2, 3, 4),
                    item -> {
                      if (item == 3) {
                        throw failure;
                      }
                      return item;
                    },
                    item -> {}))
        .isSameAs(failure);
  }
}
