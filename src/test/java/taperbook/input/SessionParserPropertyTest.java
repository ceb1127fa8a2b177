package taperbook.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.session.Channel;
import taperbook.session.Session;
import taperbook.session.Trace;

/** Properties of every session, tested with random ones; a failure names its seed. */
final class SessionParserPropertyTest {
  /** A session as text: heads and rows of cells with a decimal point. */
  private record Written(List<String> heads, List<List<String>> rows) {
    Written columnsShuffled(Random random) {
      List<Integer> order = new ArrayList<>();
      for (int i = 0; i < heads.size(); i++) {
        order.add(i);
      }
      Collections.shuffle(order, random);
      return new Written(
          order.stream().map(heads::get).toList(),
          rows.stream().map(row -> order.stream().map(row::get).toList()).toList());
    }

    String text(String delimiter, String lineEnd, char decimalMark) {
      List<String> lines = new ArrayList<>(List.of(String.join(delimiter, heads)));
      rows.forEach(row -> lines.add(String.join(delimiter, row).replace('.', decimalMark)));
      return lines.stream().map(line -> line + lineEnd).collect(Collectors.joining());
    }
  }

  static List<Long> seeds() {
    return LongStream.rangeClosed(1, 100).boxed().toList();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void column_order_delimiter_line_end_and_decimal_mark_do_not_matter(long seed) {
    Random random = new Random(seed);
    Written written = random(random);
    Session plain = Given.goodSession(written.text(",", "\n", '.'));
    Written shuffled = written.columnsShuffled(random);
    for (String delimiter : List.of(";", "\t")) {
      assertSame(plain, Given.goodSession(shuffled.text(delimiter, "\r\n", ',')), 0);
      assertSame(plain, Given.goodSession("\ufeff" + shuffled.text(delimiter, "\r", '.')), 0);
    }
    assertSame(plain, Given.goodSession(shuffled.text(",", "\n\n", '.')), 0);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void units_of_the_columns_do_not_matter(long seed) {
    Random random = new Random(seed);
    List<List<String>> metric = new ArrayList<>();
    List<List<String>> other = new ArrayList<>();
    double minutes = 0;
    for (int row = 0; row < 5; row++) {
      minutes += random.nextInt(100);
      double kilometres = random.nextInt(300);
      double celsius = random.nextInt(40);
      double kilowatts = random.nextInt(200);
      metric.add(cells(minutes, kilometres, celsius, kilowatts));
      other.add(cells(minutes * 60, kilometres / 1.609344, celsius * 9 / 5 + 32, kilowatts * 1000));
    }
    Session first =
        Given.goodSession(
            new Written(
                    List.of(
                        "elapsed [min]",
                        "range shown [km]",
                        "battery temperature [Cel]",
                        "power [kW]"),
                    metric)
                .text(",", "\n", '.'));
    Session second =
        Given.goodSession(
            new Written(
                    List.of(
                        "elapsed [s]",
                        "range shown [mi]",
                        "battery temperature [degF]",
                        "power [W]"),
                    other)
                .text(",", "\n", '.'));
    assertSame(first, second, 1e-9);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void clock_and_elapsed_times_agree(long seed) {
    Random random = new Random(seed);
    StringBuilder elapsed = new StringBuilder("elapsed [min:s],soc [%]\n");
    StringBuilder clock = new StringBuilder("clock [ISO 8601],soc [%]\n");
    int start = random.nextInt(86_400);
    int second = 0;
    for (int row = 0; row < 10; row++) {
      int soc = 5 * row;
      int time = (start + second) % 86_400;
      elapsed.append(String.format(Locale.ROOT, "%d:%02d,%d\n", second / 60, second % 60, soc));
      clock.append(
          String.format(
              Locale.ROOT, "%02d:%02d:%02d,%d\n", time / 3600, time / 60 % 60, time % 60, soc));
      second += random.nextInt(20_000);
    }
    // A clock that passes midnight is reported with a notice.
    Session byClock = Given.session(clock.toString(), Given.CONDITIONS).value().orElseThrow();
    assertSame(Given.goodSession(elapsed.toString()), byClock, 0);
  }

  private static Written random(Random random) {
    List<List<String>> rows = new ArrayList<>();
    int second = 0;
    double soc = random.nextInt(20);
    for (int row = 0; row < 2 + random.nextInt(20); row++) {
      second += random.nextInt(600);
      soc = Math.min(100, soc + random.nextInt(5));
      String power = random.nextInt(4) == 0 ? "" : oneDecimal(random.nextDouble() * 250);
      String note = random.nextInt(5) == 0 ? "note " + row : "";
      rows.add(
          List.of(
              second / 60 + ":" + (second % 60 < 10 ? "0" : "") + second % 60,
              oneDecimal(soc),
              power,
              note));
    }
    return new Written(List.of("elapsed [min:s]", "soc [%]", "power [kW]", "note"), rows);
  }

  private static String oneDecimal(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  private static List<String> cells(double... values) {
    List<String> cells = new ArrayList<>();
    for (double value : values) {
      cells.add(String.format(Locale.ROOT, "%.12f", value));
    }
    return cells;
  }

  /**
   * Compares all but the lines, which depend on blank lines, and steps, which depend on the digits.
   */
  private static void assertSame(Session a, Session b, double tolerance) {
    assertThat(b.traces().keySet()).isEqualTo(a.traces().keySet());
    assertThat(b.notes().stream().map(Session.Note::text).toList())
        .isEqualTo(a.notes().stream().map(Session.Note::text).toList());
    assertThat(b.recorded().high()).isCloseTo(a.recorded().high(), within(tolerance));
    for (Channel channel : a.traces().keySet()) {
      Trace first = a.trace(channel).orElseThrow();
      Trace second = b.trace(channel).orElseThrow();
      assertThat(second.size()).isEqualTo(first.size());
      for (int i = 0; i < first.size(); i++) {
        assertThat(second.second(i)).isCloseTo(first.second(i), within(tolerance));
        assertThat(second.value(i)).isCloseTo(first.value(i), within(tolerance));
      }
      if (tolerance == 0) {
        assertThat(second.halfStep()).isEqualTo(first.halfStep());
        assertThat(second.clockHalfStep()).isEqualTo(first.clockHalfStep());
      }
    }
  }
}
