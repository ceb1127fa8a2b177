package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import taperbook.cli.ExitStatus;

/** Files and templates that would be parsed or rendered endlessly. */
@Tag("slow")
final class TerminationTest {
  private static final Duration PATIENCE = Duration.ofSeconds(100);

  @TempDir private Path folder;
  private Workplace empty = new Workplace(Path.of(""));

  @BeforeEach
  void createEmptyFolder() throws IOException {
    empty = new Workplace(Files.createDirectory(folder.resolve("empty")));
  }

  @Test
  void mutually_recursive_forms_terminate() throws IOException {
    byte[] forged;
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PDDocument document = Loader.loadPDF(PublishedPdf.BYTES)) {
      PDStream next = form(document, "0 0 1 1 re f", null);
      for (int i = 0; i < 40; i++) {
        next = form(document, "/Next Do /Next Do", next);
      }
      document.getPage(0).setContents(stream(document, "/Next Do"));
      document.getPage(0).getResources().getCOSObject().setItem(COSName.XOBJECT, next(next));
      document.save(out);
      forged = out.toByteArray();
    }
    assertRefusedInTime(forged, "verify", "--limit", "20");
    assertThat(empty.out()).doesNotContain("\nverified");
  }

  private static PDStream stream(PDDocument document, String content) throws IOException {
    PDStream stream = new PDStream(document);
    try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(content.getBytes(StandardCharsets.US_ASCII));
    }
    return stream;
  }

  private static PDStream form(PDDocument document, String content, @Nullable PDStream next)
      throws IOException {
    PDStream form = stream(document, content);
    form.getCOSObject().setItem(COSName.TYPE, COSName.XOBJECT);
    form.getCOSObject().setItem(COSName.SUBTYPE, COSName.FORM);
    form.getCOSObject().setItem(COSName.BBOX, new PDRectangle(0, 0, 9, 9));
    if (next != null) {
      COSDictionary resources = new COSDictionary();
      resources.setItem(COSName.XOBJECT, next(next));
      form.getCOSObject().setItem(COSName.RESOURCES, resources);
    }
    return form;
  }

  private static COSDictionary next(PDStream form) {
    COSDictionary names = new COSDictionary();
    names.setItem("Next", form);
    return names;
  }

  @Test
  void an_endless_file_is_not_opened() {
    Assumptions.assumeTrue(Files.exists(Path.of("/dev/zero")), "no /dev/zero here");
    long before = System.nanoTime();
    assertThat(empty.run("verify", "/dev/zero")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.err()).contains("'/dev/zero' is not a regular file");
    assertThat(Duration.ofNanos(System.nanoTime() - before)).isLessThan(Duration.ofSeconds(10));
  }

  @Test
  void a_pipe_is_not_opened() throws IOException, InterruptedException {
    Path pipe = folder.resolve("pipe.pdf");
    int status = -1;
    try {
      status = new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor();
    } catch (IOException e) {
      Assumptions.abort("mkfifo is not here");
    }
    Assumptions.assumeTrue(status == 0, "mkfifo failed");
    assertThat(empty.run("verify", pipe.toString())).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.err()).contains("is not a regular file");
  }

  @Test
  void a_limit_is_stated_when_it_is_reached() throws IOException {
    Path file = folder.resolve("report.pdf");
    Files.write(file, slow());
    assertThat(empty.run("verify", file.toString(), "--limit", "1"))
        .isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.err()).contains("not verified: 1 second").contains("--limit SECONDS");
    assertThat(empty.run("verify", file.toString(), "--limit", "0"))
        .isEqualTo(ExitStatus.WRONG_USAGE);
    assertThat(empty.err()).contains("--limit needs a whole number of seconds from 1 to 99999");
  }

  /** A report whose template takes more than a second. */
  private byte[] slow() throws IOException {
    Workplace place = Workplace.withDemo(Files.createDirectory(folder.resolve("slow")));
    Path templates = Files.createDirectory(place.path("templates"));
    Files.writeString(
        templates.resolve("slow.ftlh"),
        "<html><head><title>Slow</title></head><body><#list 1..25000000 as i></#list>"
            + "<p>Slow.</p></body></html>");
    Files.writeString(
        place.path("reports/slow.md"),
        "---\ntitle: Slow\nsession: finch-quarry-lane-first\ntemplate: slow\n---\nInvented.\n");
    assertThat(place.run("report", "slow")).as(place.err()).isEqualTo(ExitStatus.DONE);
    return Files.readAllBytes(place.path("reports/slow/report.pdf"));
  }

  @Test
  void an_endlessly_recursive_template_is_refused() throws IOException {
    assertTemplateRefused(
        "", "<div>".repeat(100_000) + "deep" + "</div>".repeat(100_000), "levels");
  }

  @Test
  void a_page_too_small_for_its_type_is_refused() throws IOException {
    assertTemplateRefused(
        "<style>@page{size:12mm;margin:0} p{font-size:40pt}</style>",
        "<p>Words and words.</p>".repeat(9000),
        "pages");
  }

  @Test
  void a_page_without_space_between_its_margins_is_refused() throws IOException {
    assertTemplateRefused(
        "<style>@page{size:12mm}</style>", "<p>Words.</p>", "on which the layout fails");
  }

  private void assertTemplateRefused(String style, String body, String reason) throws IOException {
    Workplace place = Workplace.withDemo(Files.createDirectory(folder.resolve("template")));
    Path templates = Files.createDirectory(place.path("templates"));
    Files.writeString(
        templates.resolve("endless.ftlh"),
        "<html><head><title>Endless</title>" + style + "</head><body>" + body + "</body></html>");
    Files.writeString(
        place.path("reports/endless.md"),
        "---\ntitle: Endless\nsession: finch-quarry-lane-first\ntemplate: endless\n---\nInvented.\n");
    long before = System.nanoTime();
    assertThat(place.run("report", "endless")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err()).contains("templates/endless.ftlh").contains(reason);
    assertThat(Duration.ofNanos(System.nanoTime() - before)).isLessThan(PATIENCE);
  }

  private void assertRefusedInTime(byte[] pdf, String command, String... options)
      throws IOException {
    Path file = folder.resolve("report.pdf");
    Files.write(file, pdf);
    List<String> line = new ArrayList<>(List.of(command, file.toString()));
    line.addAll(List.of(options));
    long before = System.nanoTime();
    assertThat(empty.run(line.toArray(String[]::new)))
        .as(empty.out() + empty.err())
        .isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(Duration.ofNanos(System.nanoTime() - before)).isLessThan(PATIENCE);
  }
}
