package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdfwriter.ContentStreamWriter;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.cli.ExitStatus;

/** Verification of a published PDF without the project: detects every change. */
@Tag("slow")
final class VerifyTest {
  @TempDir private Path folder;
  private byte[] published = new byte[0];
  private Workplace empty = new Workplace(Path.of(""));

  @BeforeEach
  void copyPdf() throws IOException {
    published = PublishedPdf.BYTES.clone();
    empty = new Workplace(Files.createDirectory(folder.resolve("empty")));
  }

  @Test
  void a_published_report_is_reproduced_byte_for_byte() throws IOException {
    assertThat(verify(published)).isEqualTo(ExitStatus.DONE);
    assertThat(empty.out())
        .contains("made by Taperbook")
        .contains("verified: the report follows from the inputs it carries, byte for byte.");
    assertThat(empty.err()).isEmpty();
    assertThat(folder.resolve("empty")).isEmptyDirectory();
  }

  @Test
  void a_library_is_verified() throws IOException {
    Path demo = Files.createDirectory(folder.resolve("demo"));
    Workplace place = Workplace.withDemo(demo);
    assertThat(place.run("report", "library")).as(place.err()).isEqualTo(ExitStatus.DONE);
    byte[] pdf = Files.readAllBytes(demo.resolve("reports/library/report.pdf"));
    assertThat(verify(pdf)).as(empty.out() + empty.err()).isEqualTo(ExitStatus.DONE);
    assertThat(empty.out()).contains("byte for byte");
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 9})
  void a_report_deflated_by_another_runtime_is_verified(int level) throws IOException {
    byte[] packed = PdfObjects.of(published).deflatedAt(level).bytes();
    assertThat(packed).isNotEqualTo(published);
    assertThat(verify(packed)).as(empty.out() + empty.err()).isEqualTo(ExitStatus.DONE);
    assertThat(empty.out()).contains("byte for byte but for how its streams are deflated.");
  }

  @Test
  void a_report_repacked_by_another_library_is_recomputed_and_not_verified() throws IOException {
    byte[] packed = changed(document -> {});
    assertThat(verify(packed)).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.out())
        .containsPattern("\n  \\d+ inputs by hash: none differs\n")
        .containsPattern("\n  \\d+ numbers: none differs\n")
        .containsPattern("\n  \\d+ headline numbers as text on the pages: none is missing\n")
        .containsPattern("\n  \\d+ objects of the file: none differs\n")
        .contains(
            "recomputed, not verified: the numbers follow from the inputs; the file is packed")
        .doesNotContain("pages that differ");
  }

  @Test
  void the_recomputed_report_is_written_and_equals_the_published_one() throws IOException {
    Path file = folder.resolve("report.pdf");
    Files.write(file, changed(document -> {}));
    Path out = folder.resolve("recomputed.pdf");
    String[] line = {"verify", file.toString(), "--out", out.toString()};
    assertThat(empty.run(line)).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(out).hasBinaryContent(published);
    assertThat(empty.run(line)).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.err()).contains("there is a file '" + out + "' already");
  }

  @Test
  void a_changed_number_in_the_text_of_a_page_is_detected() throws IOException {
    assertThat(verify(changed(document -> swapTwoGlyphs(document, document.getPage(0)))))
        .isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.out())
        .containsPattern("\\d+ numbers: none differs")
        .containsPattern("objects of the file: 1 differs\n    page 1, Contents\n")
        .contains("  pages that differ: 1\n")
        .containsPattern("    page 1, line \\d+\n      carried     .+\n      recomputed  .+")
        .contains("the pages are laid out otherwise: 1 object differs.");
  }

  @Test
  void a_changed_number_in_the_numbers_file_is_detected() throws IOException {
    assertThat(
            verify(
                changed(
                    document ->
                        replace(
                            document,
                            "numbers.json",
                            text ->
                                text.replaceFirst(
                                    "(\"id\": \"peak_power\",\\s+\"label\": [^\\n]+\\s+\"value\":"
                                        + " )[0-9.]+",
                                    "$1311")))))
        .isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.out())
        .containsPattern("numbers: 1 differs\n    peak_power \\(finch-quarry-lane-first\\)\n")
        .contains("carried     311 kW, ")
        .doesNotContain("pages that differ")
        .contains("not verified: the numbers do not follow from the inputs it carries.");
  }

  @Test
  void a_report_of_another_version_names_the_methods_that_differ() throws IOException {
    PdfObjects objects = PdfObjects.of(published);
    byte[] older =
        objects
            .edit(2, t -> t.replaceAll("Taperbook [^)]*", "Taperbook 0.0.9"))
            .content(
                Forgery.numbersOf(published),
                content ->
                    new String(content, StandardCharsets.UTF_8)
                        .replaceFirst("(?s)(\"id\": \"peak_power\".*?\"value\": )123", "$1124")
                        .replaceFirst("\"method_version\": 1", "\"method_version\": 7")
                        .getBytes(StandardCharsets.UTF_8))
            .bytes();
    assertThat(verify(older)).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.out())
        .contains("made by Taperbook 0.0.9 (this is Taperbook unreleased) from 3 files")
        .containsPattern("\\d+ numbers: 1 differs\n    peak_power")
        .contains("carried     124 kW, 122.5 to 123.5, by highest_reading, version 7")
        .contains("recomputed  123 kW, 122.5 to 123.5, by highest_reading, version 1");
  }

  @Test
  void a_report_with_a_custom_style_sheet_is_recomputed_and_not_verified() throws IOException {
    byte[] pdf =
        styled(
            "print.css",
            "body { font-family: Sans } .strip, table { display: none }"
                + " h1::after { content: '423 kW' }");
    assertThat(verify(pdf)).as(empty.out() + empty.err()).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.out())
        .containsPattern(
            "2 headline numbers as text on the pages: 1 missing\n    Peak power, 123 kW")
        .contains(
            "recomputed, not verified: the numbers follow from the inputs; 1 file that is not this"
                + " program's lays the pages out and can print anything: templates/print.css.");
  }

  @Test
  void a_custom_template_that_prints_all_numbers_is_reported() throws IOException {
    byte[] pdf = styled("letter.css", "/* of the author */");
    assertThat(verify(pdf)).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.out())
        .contains("2 headline numbers as text on the pages: none is missing")
        .contains("can print anything: templates/letter.css.");
  }

  /** A report with a custom style sheet. */
  private byte[] styled(String file, String css) throws IOException {
    Workplace place = Workplace.withDemo(Files.createDirectory(folder.resolve("styled")));
    Files.createDirectory(place.path("templates"));
    Files.writeString(place.path("templates/" + file), css);
    Files.writeString(
        place.path("reports/styled.md"),
        "---\ntitle: Styled\nsession: finch-quarry-lane-first\n---\nInvented.\n");
    assertThat(place.run("report", "styled")).as(place.err()).isEqualTo(ExitStatus.DONE);
    return Files.readAllBytes(place.path("reports/styled/report.pdf"));
  }

  @Test
  void a_changed_reading_is_detected_by_its_hash_and_by_the_results() throws IOException {
    String file = "sessions/finch-quarry-lane-first/readings.csv";
    assertThat(
            verify(
                changed(
                    document ->
                        replace(document, file, t -> t.replace("6:10,32,123,", "6:10,32,183,")))))
        .isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.out())
        .containsPattern("inputs by hash: 1 differs\n    " + file + "\n")
        .containsPattern("numbers: \\d+ differ\n")
        .contains("peak_power (finch-quarry-lane-first)")
        .containsPattern("recomputed  183 kW, 182\\.5\\d* to 183\\.[45]");
  }

  @Test
  void a_changed_drawing_with_the_same_text_is_detected() throws IOException {
    assertThat(
            verify(
                changed(
                    document -> {
                      try (PDPageContentStream content =
                          new PDPageContentStream(
                              document,
                              document.getPage(1),
                              PDPageContentStream.AppendMode.APPEND,
                              true)) {
                        content.moveTo(100, 100);
                        content.lineTo(300, 200);
                        content.stroke();
                      }
                    })))
        .isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.out()).contains("  pages that differ: 2\n").doesNotContain("page 2, line");
  }

  @Test
  void a_changed_title_in_the_metadata_is_detected() throws IOException {
    byte[] retitled = changed(d -> d.getDocumentInformation().setTitle("Another title"));
    assertThat(verify(retitled)).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.out()).contains("objects of the file: 1 differs\n    trailer, Info, Title\n");
  }

  @Test
  void an_embedded_reading_that_is_invalid_is_reported_with_its_location() throws IOException {
    String file = "sessions/finch-quarry-lane-first/readings.csv";
    assertThat(
            verify(changed(d -> replace(d, file, t -> t.replace("6:10,32,123,", "6:10,32,many,")))))
        .isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.err()).contains("error  " + file + ":9:3");
    assertThat(empty.out())
        .contains(file)
        .contains("not verified: the report cannot be made again from what the PDF carries.");
  }

  @Test
  void a_file_that_is_not_a_report_is_refused_with_a_message() throws IOException {
    assertThat(verify("hello".getBytes(StandardCharsets.UTF_8)))
        .isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.err())
        .contains("found     no PDF, or a damaged one")
        .contains("[published-not-understood]");
    ByteArrayOutputStream bare = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument()) {
      document.addPage(new PDPage());
      document.save(bare);
    }
    assertThat(verify(bare.toByteArray())).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.err()).contains("found     a PDF that carries no numbers.json");
    assertThat(verify(changed(d -> replace(d, "numbers.json", t -> t.substring(0, 500)))))
        .isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.err()).contains("found     text that is not JSON: ");
    byte[] half = Arrays.copyOf(published, published.length / 2);
    assertThat(verify(half)).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.err()).doesNotContain("Exception");
  }

  @Test
  void a_decompression_bomb_is_refused() throws IOException {
    byte[] bomb =
        changed(
            document -> {
              PDStream stream = new PDStream(document);
              try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
                byte[] zeros = new byte[1 << 20];
                for (int i = 0; i < 80; i++) {
                  out.write(zeros);
                }
              }
              document.getPage(0).setContents(stream);
            });
    assertThat(bomb.length).isLessThan(3 * published.length);
    assertThat(verify(bomb)).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.out())
        .contains("not verified: its pages cannot be compared (it unpacks to more than is read).");
  }

  @Test
  void wrong_usage_is_reported() {
    assertThat(empty.run("verify")).isEqualTo(ExitStatus.WRONG_USAGE);
    assertThat(empty.run("verify", "nothing.pdf")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(empty.err()).contains("there is no file 'nothing.pdf'");
  }

  private interface Change {
    void to(PDDocument document) throws IOException;
  }

  private byte[] changed(Change change) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PDDocument document = Loader.loadPDF(published)) {
      change.to(document);
      document.save(out);
    }
    return out.toByteArray();
  }

  private ExitStatus verify(byte[] pdf) throws IOException {
    Path file = folder.resolve("report.pdf");
    Files.write(file, pdf);
    return empty.run("verify", file.toString());
  }

  private static void replace(PDDocument document, String name, UnaryOperator<String> edit)
      throws IOException {
    PDEmbeddedFile file =
        document.getDocumentCatalog().getNames().getEmbeddedFiles().getNames().entrySet().stream()
            .filter(e -> e.getKey().equals(name))
            .map(e -> e.getValue().getEmbeddedFile())
            .findFirst()
            .orElseThrow();
    String before = new String(file.toByteArray(), StandardCharsets.UTF_8);
    String after = edit.apply(before);
    assertThat(after).isNotEqualTo(before);
    byte[] bytes = after.getBytes(StandardCharsets.UTF_8);
    try (OutputStream out = file.createOutputStream(COSName.FLATE_DECODE)) {
      new ByteArrayInputStream(bytes).transferTo(out);
    }
    file.setSize(bytes.length);
  }

  /** Swaps the first two different glyphs of a text, as in a forged figure. */
  private static void swapTwoGlyphs(PDDocument document, PDPage page) throws IOException {
    List<Object> tokens = new PDFStreamParser(page).parse();
    for (int i = 1; i < tokens.size(); i++) {
      boolean shows =
          tokens.get(i) instanceof Operator operator && operator.getName().startsWith("T");
      if (shows && swapped(tokens, i - 1)) {
        PDStream stream = new PDStream(document);
        try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
          new ContentStreamWriter(out).writeTokens(tokens);
        }
        page.setContents(stream);
        return;
      }
    }
    throw new IllegalStateException("the page shows no text");
  }

  private static boolean swapped(List<Object> tokens, int index) {
    if (tokens.get(index) instanceof COSString string) {
      byte[] glyphs = string.getBytes();
      if (glyphs.length >= 4 && (glyphs[0] != glyphs[2] || glyphs[1] != glyphs[3])) {
        byte[] other = {glyphs[2], glyphs[3], glyphs[0], glyphs[1]};
        System.arraycopy(other, 0, glyphs, 0, 4);
        tokens.set(index, new COSString(glyphs, true));
        return true;
      }
    }
    return tokens.get(index) instanceof COSArray array && swappedWithin(array);
  }

  private static boolean swappedWithin(COSArray array) {
    for (int i = 0; i < array.size(); i++) {
      List<Object> one = new ArrayList<>(List.of(array.get(i)));
      if (swapped(one, 0)) {
        array.set(i, (COSString) one.get(0));
        return true;
      }
    }
    return false;
  }
}
