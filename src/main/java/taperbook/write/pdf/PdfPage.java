package taperbook.write.pdf;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import taperbook.draw.picture.Figure;
import taperbook.draw.picture.Painting;

/** Lays a page out as PDF/A-3a and PDF/UA-1. */
public final class PdfPage {
  private static final String FIGURE_SCHEME = "figure";
  private static final float PDF_VERSION = 1.7f;

  private final Map<String, Painting> charts;

  /**
   * A page with charts.
   *
   * @param figures charts; a template shows one by {@code <img src="figure:NAME.svg">}
   */
  public PdfPage(List<Figure> figures) {
    this.charts = figures.stream().collect(Collectors.toMap(Figure::id, Figure::painting));
  }

  /**
   * The PDF.
   *
   * @param html what the template gave
   * @param heading what it says of itself
   * @param attachments the files it carries
   */
  public byte[] bytes(String html, PdfHeading heading, List<PdfAttachment> attachments) {
    QuietLibraries.hush();
    PdfRendererBuilder builder =
        new PdfRendererBuilder()
            .withW3cDocument(PdfMarkup.document(html), "")
            .usePdfVersion(PDF_VERSION)
            .usePdfAConformance(PdfRendererBuilder.PdfAConformance.PDFA_3_A)
            .usePdfUaAccessibility(true)
            .useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData())
            .useProtocolsStreamImplementation(this::figure, FIGURE_SCHEME)
            .useProtocolsStreamImplementation(PdfPage::font, PdfFonts.SCHEME)
            .useExternalResourceAccessControl(
                (address, type) -> isOurs(address),
                ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI)
            .useFastMode();
    try (ChartDrawer drawer = new ChartDrawer(charts);
        PdfBoxRenderer renderer = builder.useSVGDrawer(drawer).buildPdfRenderer();
        PDDocument document = renderer.createPDFKeepOpen()) {
      return new PdfFinish(document, heading).bytes(attachments, hash(html, heading, attachments));
    } catch (IOException e) {
      throw new UncheckedIOException(heading.title(), e);
    }
  }

  /** A template may show charts and what it holds itself; no file and no address of the web. */
  private static boolean isOurs(String address) {
    return List.of(FIGURE_SCHEME, PdfFonts.SCHEME, "data").stream()
        .anyMatch(scheme -> address.startsWith(scheme + ":"));
  }

  private FSStream figure(String address) {
    String name = address.substring(FIGURE_SCHEME.length() + 1).replaceFirst("\\.svg$", "");
    if (!charts.containsKey(name)) {
      throw new IllegalArgumentException("no chart has the address " + address);
    }
    return new TextStream(ChartDrawer.standIn(name));
  }

  private static FSStream font(String address) {
    return new FSStream() {
      @Override
      public InputStream getStream() {
        return PdfFonts.open(address);
      }

      @Override
      public Reader getReader() {
        return new InputStreamReader(getStream(), StandardCharsets.ISO_8859_1);
      }
    };
  }

  private record TextStream(String text) implements FSStream {
    @Override
    public InputStream getStream() {
      return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public Reader getReader() {
      return new StringReader(text);
    }
  }

  private static byte[] hash(String html, PdfHeading heading, List<PdfAttachment> attachments) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      digest.update(html.getBytes(StandardCharsets.UTF_8));
      digest.update(heading.words().getBytes(StandardCharsets.UTF_8));
      attachments.forEach(a -> digest.update(a.bytes()));
      return digest.digest();
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
  }
}
