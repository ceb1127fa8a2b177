package taperbook.verify;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The canonical form of files that the PDF library wrote, without a report. */
final class CanonicalPdfTest {
  private static final int MUTATIONS = 2000;

  @Test
  void a_file_equals_itself_and_its_copy() throws IOException {
    byte[] pdf = pdf("0 0 9 9 re f", "1 1 8 8 re f");
    assertThat(CanonicalPdf.isSame(pdf, pdf)).isTrue();
    assertThat(CanonicalPdf.isSame(pdf.clone(), pdf)).isTrue();
  }

  /**
   * A deflated stream ends with unused bits up to the next whole byte: changing one of them is
   * another encoding of the same content.
   */
  @Test
  void every_mutation_except_of_padding_bits_is_a_difference() throws IOException {
    byte[] pdf = pdf("0 0 9 9 re f".repeat(40), "1 1 8 8 re f".repeat(30));
    int same = 0;
    for (int seed = 1; seed <= MUTATIONS; seed++) {
      byte[] mutated = mutated(pdf, new Random(seed));
      if (CanonicalPdf.isSame(mutated, pdf) && !Arrays.equals(mutated, pdf)) {
        same++;
        assertThat(contents(mutated)).as("seed %s", seed).isEqualTo(contents(pdf));
        assertThat(mutated).as("seed %s", seed).hasSameSizeAs(pdf);
      }
    }
    assertThat(same).isLessThan(MUTATIONS / 200);
  }

  private static String contents(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new String(document.getPage(0).getContents().readAllBytes(), ISO_8859_1);
    }
  }

  private static byte[] mutated(byte[] pdf, Random random) {
    int at = random.nextInt(pdf.length);
    int length = 1 + random.nextInt(Math.min(40, pdf.length - at));
    byte[] noise = new byte[length];
    random.nextBytes(noise);
    return switch (random.nextInt(6)) {
      case 0 -> {
        byte[] other = pdf.clone();
        other[at] ^= (byte) (1 << random.nextInt(8));
        yield other;
      }
      case 1 -> joined(Arrays.copyOf(pdf, at), Arrays.copyOfRange(pdf, at + length, pdf.length));
      case 2 -> joined(Arrays.copyOf(pdf, at), noise, Arrays.copyOfRange(pdf, at, pdf.length));
      case 3 ->
          joined(
              Arrays.copyOf(pdf, at + length),
              Arrays.copyOfRange(pdf, at, at + length),
              Arrays.copyOfRange(pdf, at + length, pdf.length));
      case 4 -> Arrays.copyOf(pdf, at);
      default -> joined(pdf, noise);
    };
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", " ", "%", "%%EOF\n", "\0"})
  void bytes_before_the_start_or_after_the_end_are_differences(String more) throws IOException {
    byte[] pdf = pdf("0 0 9 9 re f", "1 1 8 8 re f");
    assertThat(CanonicalPdf.isSame(joined(pdf, more.getBytes(ISO_8859_1)), pdf)).isFalse();
    assertThat(CanonicalPdf.isSame(joined(more.getBytes(ISO_8859_1), pdf), pdf)).isFalse();
  }

  @Test
  void bytes_moved_between_streams_are_a_difference() throws IOException {
    byte[] one = pdf("0 0 9 9 re f 1 1 8 8 re f", " 2 2 7 7 re f");
    byte[] other = pdf("0 0 9 9 re f", " 1 1 8 8 re f 2 2 7 7 re f");
    assertThat(CanonicalPdf.isSame(one, other)).isFalse();
    PdfComparison.Found found = PdfComparison.of(one, other);
    assertThat(found.layout()).isEqualTo(PdfComparison.Layout.OTHER);
    assertThat(found.objects()).extracting(Difference::place).contains("page 1, Contents, 1");
    assertThat(found.pages()).containsExactly(1);
  }

  @Test
  void files_without_streams_and_empty_files_are_compared() {
    byte[] pdf = "%PDF-1.7\n".getBytes(ISO_8859_1);
    assertThat(CanonicalPdf.isSame(pdf, pdf)).isTrue();
    assertThat(CanonicalPdf.isSame(new byte[0], pdf)).isFalse();
    assertThat(CanonicalPdf.isSame(pdf, new byte[0])).isFalse();
  }

  /** A document of one page with its content in two streams. */
  private static byte[] pdf(String first, String second) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage();
      page.setContents(Arrays.asList(stream(document, first), stream(document, second)));
      document.addPage(page);
      document.setDocumentId(7L);
      document.save(out);
    }
    return out.toByteArray();
  }

  private static PDStream stream(PDDocument document, String content) throws IOException {
    return new PDStream(
        document, new ByteArrayInputStream(content.getBytes(ISO_8859_1)), COSName.FLATE_DECODE);
  }

  private static byte[] joined(byte[]... parts) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      out.writeBytes(part);
    }
    return out.toByteArray();
  }
}
