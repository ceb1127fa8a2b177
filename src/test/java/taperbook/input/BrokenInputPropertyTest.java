package taperbook.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.Severity;
import taperbook.input.csv.CsvParser;
import taperbook.input.csv.CsvTable;
import taperbook.input.folder.ReportFileParser;
import taperbook.input.plan.ReportPlanParser;
import taperbook.session.InputFile;

/**
 * With any corruption of a file, parsing and validation return a value or errors, throw no
 * exception, and are deterministic.
 */
@Tag("slow")
final class BrokenInputPropertyTest {
  private static final String READINGS =
      """
      elapsed [min:s],soc [%],power [kW],energy added [kWh],battery temperature [degF],note
      0:00,10,51.5,0,68,"plugged in, cold"
      1:30,12,,2.1,,
      75:30,80,60,43,95,
      """;
  private static final String CLOCK =
      "clock [ISO 8601];soc [%]\r\n2026-03-14T23:59:50+01:00;10,5\r\n2026-03-15T00:10:00Z;80\r\n";
  private static final String LEGS =
      "leg\tdistance [mi]\tduration [h]\tstart soc [%]\tend soc [%]\nout\t100\t1,5\t92\t60\n";
  private static final String REPORT =
      """
      ---
      title: T
      session: one
      compare:
        - two
      distances: 100 mi, 200 mi
      window: 10-80 %
      ---
      Body
      """;
  private static final String ODD =
      ",;\t\n\r\"'[]()-:.%#e+0\u00e9\u00a0\ufeff\u2212\ud83d\ude97 x9";

  static List<Long> seeds() {
    return LongStream.rangeClosed(1, 400).boxed().toList();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void corrupted_readings_never_throw(long seed) {
    byte[] damaged = damage(seed, seed % 2 == 0 ? READINGS : CLOCK);
    assertSound(() -> session(damaged, Given.CONDITIONS.getBytes(StandardCharsets.UTF_8)));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void corrupted_conditions_never_throw(long seed) {
    byte[] damaged = damage(seed, Given.CONDITIONS + "price per kWh,0.59,EUR/kWh,\n");
    assertSound(() -> session(READINGS.getBytes(StandardCharsets.UTF_8), damaged));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void corrupted_range_tests_never_throw(long seed) {
    byte[] test = damage(seed, Given.RANGE_TEST + "odometer correction,2,%,measured\n");
    byte[] legs = damage(seed, LEGS);
    assertSound(
        () ->
            table("t.csv", test)
                .then(
                    t ->
                        table("l.csv", legs)
                            .then(l -> RangeTestParser.check("t", t, Optional.of(l)))));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void corrupted_reports_never_throw(long seed) {
    byte[] damaged = damage(seed, REPORT);
    assertSound(
        () ->
            ReportFileParser.read(new InputFile("r.md", damaged))
                .then(
                    raw ->
                        ReportPlanParser.check(
                            "r",
                            raw,
                            Set.of("one", "two"),
                            Set.of(),
                            Set.of("report"),
                            name -> false)));
  }

  @Test
  void cells_of_any_length_are_accepted() {
    String digits = "1 000".repeat(50_000);
    String readings = "elapsed [s],soc [%]," + "[(".repeat(50_000) + "\n0," + digits + ",\n";
    Checked<?> checked =
        session(
            readings.getBytes(StandardCharsets.UTF_8),
            ("item,value,unit,how known\n" + digits + ",,,\n").getBytes(StandardCharsets.UTF_8));
    assertThat(checked.isUsable()).isFalse();
    assertThat(checked.problems()).allMatch(p -> p.sentence().length() < 1000);
  }

  private static Checked<?> session(byte[] readings, byte[] conditions) {
    return table("r.csv", readings)
        .then(r -> table("c.csv", conditions).then(c -> SessionParser.check("s", r, c)));
  }

  private static Checked<CsvTable> table(String path, byte[] bytes) {
    return CsvParser.read(new InputFile(path, bytes));
  }

  private static void assertSound(Supplier<Checked<?>> work) {
    Checked<?> checked = work.get();
    boolean refused = checked.problems().stream().anyMatch(p -> p.severity() == Severity.ERROR);
    assertThat(checked.isUsable()).isNotEqualTo(refused);
    List<String> sentences = checked.problems().stream().map(Problem::sentence).toList();
    assertThat(sentences).noneMatch(s -> s.contains("\n") || s.contains("null"));
    assertThat(work.get().problems().stream().map(Problem::sentence).toList()).isEqualTo(sentences);
  }

  /** Deletes, inserts, changes, or repeats parts of a text, and sometimes a single byte. */
  private static byte[] damage(long seed, String text) {
    Random random = new Random(seed);
    StringBuilder damaged = new StringBuilder(text);
    for (int i = 0; i <= random.nextInt(6) && damaged.length() > 10; i++) {
      int at = random.nextInt(damaged.length());
      int end = Math.min(damaged.length(), at + 1 + random.nextInt(8));
      switch (random.nextInt(4)) {
        case 0 -> damaged.delete(at, end);
        case 1 -> damaged.insert(at, ODD.charAt(random.nextInt(ODD.length())));
        case 2 -> damaged.setCharAt(at, ODD.charAt(random.nextInt(ODD.length())));
        default -> damaged.insert(at, damaged.substring(at, end));
      }
    }
    byte[] bytes = damaged.toString().getBytes(StandardCharsets.UTF_8);
    if (random.nextInt(20) == 0) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return bytes;
  }
}
