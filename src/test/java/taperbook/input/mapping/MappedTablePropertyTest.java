package taperbook.input.mapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.input.Given;
import taperbook.session.Channel;
import taperbook.session.RowRef;
import taperbook.session.Session;

/** A foreign file with its map gives the same session as the plain file with its readings. */
final class MappedTablePropertyTest {
  private static final String MAP =
      """
      leading lines,2
      rows of units,1
      delimiter,semicolon
      decimal mark,comma
      missing,n/a | -9999
      elapsed,ms,s,0.001,less first
      soc,share,%,100
      power,load,W,-1
      energy added,meter,kWh,,less first
      battery temperature,cells,Cel,0.1,-40
      note,said
      """;

  static List<Long> seeds() {
    return LongStream.rangeClosed(1, 200).boxed().toList();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void a_mapped_file_gives_the_session_of_the_plain_file(long seed) {
    Random random = new Random(seed);
    StringBuilder plain =
        new StringBuilder(
            "elapsed [s],soc [%],power [W],energy added [kWh],battery temperature [Cel],note\n");
    StringBuilder foreign =
        new StringBuilder("Log of a drive\n\n said;cells;meter;load;share;ms;x\n;;kWh;W;;ms;\n");
    int start = random.nextInt(1_000_000);
    int meter = random.nextInt(90_000);
    int time = 0;
    int share = random.nextInt(10);
    int added = 0;
    int rows = 3 + random.nextInt(30);
    for (int i = 0; i < rows; i++) {
      // The first value of a column of elapsed time must be present.
      boolean cold = random.nextInt(5) == 0;
      boolean idle = i > 0 && random.nextInt(5) == 0;
      int watts = random.nextInt(90_000);
      int tenths = random.nextInt(400);
      plain.append(
          String.format(
              Locale.ROOT,
              "%s,%d,%s,%s,%s,%s%n",
              BigDecimal.valueOf(time, 3),
              share,
              watts,
              idle ? "" : BigDecimal.valueOf(added, 2),
              cold ? "" : BigDecimal.valueOf(tenths - 400, 1),
              i == 1 ? "plugged" : ""));
      foreign.append(
          String.format(
              Locale.ROOT,
              "%s;%s;%s;%d;0,%02d;%d;y%n",
              i == 1 ? "plugged" : "",
              cold ? "n/a" : tenths,
              idle ? "-9999" : decimalComma(BigDecimal.valueOf(meter + added, 2)),
              -watts,
              share,
              start + time));
      if (i == 1) {
        foreign.append("said;cells;meter;load;share;ms;x\n");
      }
      time += random.nextInt(5000);
      share = Math.min(99, share + random.nextInt(4));
      added += random.nextInt(300);
    }
    Session mapped =
        Given.good(Foreign.session(MAP, foreign.toString().replace(System.lineSeparator(), "\n")));
    Session contract = Given.goodSession(plain.toString().replace(System.lineSeparator(), "\n"));
    assertThat(Foreign.content(mapped)).isEqualTo(Foreign.content(contract));
    assertThat(mapped.trace(Channel.SOC).orElseThrow().row(0)).isEqualTo(new RowRef("r.csv", 5));
    assertThat(mapped.trace(Channel.SOC).orElseThrow().row(2)).isEqualTo(new RowRef("r.csv", 8));
  }

  private static String decimalComma(BigDecimal number) {
    return number.toPlainString().replace('.', ',');
  }
}
