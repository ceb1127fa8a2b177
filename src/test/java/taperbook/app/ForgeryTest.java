package taperbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import taperbook.app.process.ExitStatus;

/** No file is verified that shows, in any reader, what does not follow from its inputs. */
final class ForgeryTest {
  @TempDir private Path folder;
  private Workplace empty = new Workplace(Path.of(""));

  @BeforeEach
  void take_an_empty_folder() throws IOException {
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

  private ExitStatus verify(byte[] pdf) throws IOException {
    Path file = folder.resolve("report.pdf");
    Files.write(file, pdf);
    return empty.run("verify", file.toString());
  }
}
