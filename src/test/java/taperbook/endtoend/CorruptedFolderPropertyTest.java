package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.cli.ExitStatus;

/**
 * With any permutation of lines, cells, and bytes of a valid folder, the check exits with done or
 * refused, and each problem has its five lines.
 */
@Tag("slow")
final class CorruptedFolderPropertyTest {
  private static final int SEEDS = Integer.getInteger("spoilt", 40);
  private static final List<String> ODD =
      List.of(
          "",
          "-",
          "1e99",
          "-1e99",
          "9".repeat(400),
          "NaN",
          "Infinity",
          "0",
          "1e-99",
          "\0",
          "\"",
          "\ufeff",
          "\u2028",
          "=1+1",
          "${x}",
          "<#if>",
          "null",
          "1:60",
          "2026-02-30",
          "\ud83d\ude97",
          "../..",
          " ",
          "1,5",
          "unknown");

  @TempDir private Path folder = Path.of("");

  static List<Long> seeds() {
    return LongStream.rangeClosed(1, SEEDS).boxed().toList();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  @Timeout(value = 60, unit = TimeUnit.SECONDS)
  void a_corrupted_folder_is_built_or_refused(long seed) throws IOException {
    Random random = new Random(seed);
    Path valid = CorpusFile.FOLDER.resolve("valid");
    List<Path> copies = new ArrayList<>();
    try (Stream<Path> all = Files.walk(valid)) {
      for (Path file : all.filter(Files::isRegularFile).sorted().toList()) {
        Path copy = folder.resolve(valid.relativize(file).toString());
        Files.createDirectories(copy.resolve(".."));
        copies.add(Files.copy(file, copy));
      }
    }
    for (int i = 0; i <= random.nextInt(3); i++) {
      corrupt(copies.get(random.nextInt(copies.size())), random);
    }
    Workplace place = new Workplace(folder);
    assertThat(place.run("check")).as(place.err()).isIn(ExitStatus.DONE, ExitStatus.INPUT_REFUSED);
    List<String> problems = CorpusOfBadInputsTest.problems(place.err());
    assertThat(problems).allMatch(t -> t.matches("[^ ]+ \\[[a-z0-9-]+\\] .+ \\| .+ \\| .+"));
    assertThat(place.err() + place.out()).doesNotContain("Exception").doesNotContain("Infinity k");
  }

  private static void corrupt(Path file, Random random) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    List<String> lines =
        new ArrayList<>(List.of(new String(bytes, StandardCharsets.UTF_8).split("\n")));
    int at = random.nextInt(lines.size());
    switch (random.nextInt(7)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(at, lines.get(at));
      case 2 -> Collections.swap(lines, at, random.nextInt(lines.size()));
      case 3 -> lines.replaceAll(line -> line + "\r");
      case 4 -> lines.set(0, "\ufeff" + lines.get(0));
      default -> lines.set(at, oddCell(lines.get(at), random));
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes((String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
    byte[] corrupted = out.toByteArray();
    if (random.nextInt(8) == 0) {
      corrupted[random.nextInt(corrupted.length)] ^= (byte) (1 << random.nextInt(8));
    }
    Files.write(file, corrupted);
  }

  private static String oddCell(String line, Random random) {
    String[] cells = line.split(",", -1);
    cells[random.nextInt(cells.length)] = ODD.get(random.nextInt(ODD.size()));
    return String.join(",", cells);
  }
}
