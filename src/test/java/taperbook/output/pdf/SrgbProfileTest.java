package taperbook.output.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Compares the profile with the colour management of the JDK. */
final class SrgbProfileTest {
  private final ICC_ColorSpace ours =
      new ICC_ColorSpace(ICC_Profile.getInstance(SrgbProfile.bytes()));

  @Test
  void is_a_display_profile_of_version_4() {
    ICC_Profile profile = ICC_Profile.getInstance(SrgbProfile.bytes());
    assertThat(profile.getMajorVersion()).isEqualTo(4);
    assertThat(profile.getProfileClass()).isEqualTo(ICC_Profile.CLASS_DISPLAY);
    assertThat(profile.getColorSpaceType()).isEqualTo(ColorSpace.TYPE_RGB);
    assertThat(profile.getNumComponents()).isEqualTo(3);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 0",
    "1, 1, 1",
    "1, 0, 0",
    "0, 1, 0",
    "0, 0, 1",
    "0.5, 0.5, 0.5",
    "0.03, 0.2, 0.9",
    "0.11, 0.47, 0.71",
    "0.9, 0.6, 0.02"
  })
  void matches_the_colours_of_the_jdk_profile(float r, float g, float b) {
    ColorSpace known = ColorSpace.getInstance(ColorSpace.CS_sRGB);
    float[] colour = {r, g, b};
    float[] expected = known.toCIEXYZ(colour);
    float[] found = ours.toCIEXYZ(colour);
    for (int i = 0; i < 3; i++) {
      // Two steps of the profile's 16-bit numbers, doubled by the two conversions.
      assertThat(found[i]).isCloseTo(expected[i], within(0.0015f));
    }
  }

  /** Java 17 writes its colour management's name into the header of a profile that it reads. */
  @Test
  void is_in_the_pdf_as_it_is_whatever_the_java_version() throws IOException {
    try (PDDocument document = new PDDocument()) {
      document.addPage(new PDPage());
      document
          .getDocumentCatalog()
          .addOutputIntent(
              new PDOutputIntent(document, new ByteArrayInputStream(SrgbProfile.bytes())));
      PdfMetadata metadata = new PdfMetadata("T", "A", "S", "Taperbook", LocalDate.EPOCH);
      byte[] pdf = new PdfFinish(document, metadata).bytes(List.of(), new byte[8]);
      try (PDDocument read = Loader.loadPDF(pdf)) {
        PDOutputIntent intent = read.getDocumentCatalog().getOutputIntents().get(0);
        assertThat(intent.getDestOutputIntent().createInputStream().readAllBytes())
            .isEqualTo(SrgbProfile.bytes());
      }
    }
  }
}
