package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;
import taperbook.cli.ExitStatus;

/** Validates the PDF of a library against ISO 19005-3 and ISO 14289-1 with veraPDF. */
@Tag("slow")
final class LibraryPdfTest {
  @TempDir private Path folder = Path.of("");

  @Test
  void conforms_to_both_standards_on_portrait_and_landscape_pages() throws Exception {
    Workplace place = ManySessions.write(folder, 30);
    assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
    byte[] pdf = Files.readAllBytes(place.path("reports/library/report.pdf"));
    // The validator lower-cases names in the default locale, where Turkish has a dotless i.
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.ROOT);
    try {
      VeraGreenfieldFoundryProvider.initialise();
      assertThat(broken(pdf, PDFAFlavour.PDFA_3_A)).isEmpty();
      assertThat(broken(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
    } finally {
      Locale.setDefault(before);
    }
  }

  private static List<String> broken(byte[] pdf, PDFAFlavour flavour)
      throws VeraPDFException, IOException {
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
      ValidationResult result = validator.validate(parser);
      List<String> failed =
          result.getTestAssertions().stream()
              .filter(a -> a.getStatus() == TestAssertion.Status.FAILED)
              .map(a -> a.getRuleId().getClause() + " " + a.getMessage() + " " + a.getLocation())
              .distinct()
              .limit(5)
              .toList();
      assertThat(result.isCompliant()).isEqualTo(failed.isEmpty());
      return failed;
    }
  }
}
