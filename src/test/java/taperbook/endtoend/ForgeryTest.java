package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.cli.ExitStatus;

/**
 * No file is verified that shows, in any reader, something that does not follow from its inputs.
 */
@Tag("slow")
final class ForgeryTest {
  @TempDir private Path folder;
  private Workplace empty = new Workplace(Path.of(""));

  @BeforeEach
  void createEmptyFolder() throws IOException {
    empty = new Workplace(Files.createDirectory(folder.resolve("empty")));
  }

  @ParameterizedTest
  @EnumSource
  void a_forged_file_is_not_verified(Forgery forgery) throws IOException {
    byte[] forged = forgery.of(PublishedPdf.BYTES);
    assertThat(forged).isNotEqualTo(PublishedPdf.BYTES);
    assertThat(verify(forged)).as(empty.out() + empty.err()).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.out()).doesNotContain("\nverified");
  }

  /** A few of the seeds; larger counts are run by hand. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void a_mutated_file_is_not_verified(int seed) throws IOException {
    byte[] mutated = mutated(seed);
    assertThat(verify(mutated)).as("seed %s", seed).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.out()).doesNotContain("\nverified");
  }

  static byte[] mutated(int seed) {
    Random random = new Random(seed);
    byte[] mutated = PublishedPdf.BYTES.clone();
    int changes = 1 + random.nextInt(4);
    for (int i = 0; i < changes; i++) {
      mutated[random.nextInt(mutated.length)] ^= (byte) (1 + random.nextInt(255));
    }
    return mutated;
  }

  private ExitStatus verify(byte[] pdf) throws IOException {
    Path file = folder.resolve("report.pdf");
    Files.write(file, pdf);
    return empty.run("verify", file.toString());
  }
}
