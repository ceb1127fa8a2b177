package taperbook.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class SamplesTest {
  /** With spare capacity, with none, and with too little. */
  @ParameterizedTest
  @ValueSource(ints = {64, 20, 3})
  void a_trace_has_the_added_readings(int room) {
    Samples samples = twenty(room);
    Trace trace = new Trace("r.csv", samples, 0.5, 0.25);
    assertThat(trace.size()).isEqualTo(20);
    assertThat(trace.lastSecond()).isEqualTo(190);
    assertThat(trace.value(7)).isEqualTo(3.5);
    assertThat(trace.row(7)).isEqualTo(new RowRef("r.csv", 9));
    assertThat(trace.halfStep()).isEqualTo(0.5);
    assertThat(trace.clockHalfStep()).isEqualTo(0.25);
  }

  @ParameterizedTest
  @ValueSource(ints = {64, 20, 3})
  void later_changes_do_not_affect_a_trace(int room) {
    Samples samples = twenty(room);
    Trace trace = new Trace("r.csv", samples, 0.5, 0.25);
    assertThatThrownBy(() -> samples.add(200, 1, 30)).isInstanceOf(IllegalStateException.class);
    assertThatThrownBy(() -> samples.show(new double[20]))
        .isInstanceOf(IllegalStateException.class);
    trace.values()[7] = 0;
    trace.seconds()[19] = 0;
    samples.values()[7] = 0;
    assertThat(trace.value(7)).isEqualTo(3.5);
    assertThat(trace.lastSecond()).isEqualTo(190);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4})
  void rows_of_neighbouring_readings_are_those_of_each(int last) {
    int[] lines = {2, 3, 7, 8, 10};
    Trace trace = new Trace("r.csv", new double[5], new double[5], lines, 0, 0);
    for (int first = 0; first <= last; first++) {
      List<RowRef> each = IntStream.rangeClosed(first, last).mapToObj(trace::row).toList();
      assertThat(trace.rows(first, last)).isEqualTo(each);
    }
  }

  @Test
  void decimal_places_belong_to_readings_and_not_to_computed_values() {
    Samples samples = new Samples(1);
    for (int i = 0; i < 40; i++) {
      samples.addWritten(i, i, i + 2, i % 3);
    }
    samples.add(40, 40, 42);
    double[] others = samples.values();
    others[7] = 70;
    samples.show(others);
    Trace trace = new Trace("r.csv", samples, 0.5, 0.25);
    assertThat(trace.places(38)).hasValue(2);
    assertThat(trace.places(7)).isEmpty();
    assertThat(trace.places(40)).isEmpty();
    Trace without = trace.inColumn(3).withoutRow(new RowRef("r.csv", 2)).orElseThrow();
    assertThat(without.places(0)).hasValue(1);
    assertThat(without.places(37)).hasValue(2);
    assertThatThrownBy(() -> new Samples(1).addWritten(0, 0, 2, -1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static Samples twenty(int room) {
    Samples samples = new Samples(room);
    for (int i = 0; i < 20; i++) {
      samples.add(10 * i, i / 2.0, i + 2);
    }
    return samples;
  }
}
