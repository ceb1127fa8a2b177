package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import taperbook.cli.ExitStatus;

/** The PDF of a short report of invented data, created once for all tests. */
final class PublishedPdf {
  static final byte[] BYTES = make();

  private PublishedPdf() {}

  private static byte[] make() {
    try {
      Path folder = Files.createTempDirectory(Path.of("target"), "verified-");
      Workplace place = Workplace.withDemo(folder);
      Files.writeString(
          folder.resolve("reports/short.md"),
          "---\ntitle: Short\nsession: finch-quarry-lane-first\n---\nInvented. Peak: "
              + "${number(\"peak_power\")}.\n");
      assertThat(place.run("report", "short")).as(place.err()).isEqualTo(ExitStatus.DONE);
      return Files.readAllBytes(folder.resolve("reports/short/report.pdf"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
