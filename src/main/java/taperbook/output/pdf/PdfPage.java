package taperbook.output.pdf;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jsoup.Jsoup;
import org.jsoup.helper.W3CDom;
import org.jsoup.nodes.DataNode;
import org.jsoup.nodes.Element;
import taperbook.chart.render.Figure;
import taperbook.chart.render.Painting;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.SourceLocation;
import taperbook.i18n.Texts;
import taperbook.session.InputHash;

/** Lays a page out as PDF/A-3a and PDF/UA-1. */
public final class PdfPage {
  private static final String FIGURE_SCHEME = "figure";
  private static final float PDF_VERSION = 1.7f;

  private final Map<String, Painting> charts;
  private final String template;
  private final boolean builtIn;

  /**
   * Creates a page with charts.
   *
   * @param figures charts; a template shows one by {@code <img src="figure:NAME.svg">}
   * @param template file name of its template
   * @param builtIn true if no template or style sheet is the user's
   */
  public PdfPage(List<Figure> figures, String template, boolean builtIn) {
    this.charts = figures.stream().collect(Collectors.toMap(Figure::id, Figure::painting));
    this.template = template;
    this.builtIn = builtIn;
  }

  /**
   * Returns the PDF, or the reason why the page cannot be laid out.
   *
   * @param html the template's output
   * @param heading its metadata
   * @param attachments returns the attached files; called once the page is laid out
   */
  public Checked<byte[]> bytes(
      String html, PdfMetadata heading, Supplier<List<PdfAttachment>> attachments) {
    LibraryLogging.silenceLoggers();
    try {
      return Checked.good(BoundedLayout.of(() -> laidOut(html, heading, attachments)));
    } catch (LayoutException e) {
      return refused(e.words());
    } catch (IOException e) {
      throw new UncheckedIOException(heading.title(), e);
    } catch (CompletionException e) {
      // The attached files could not be made.
      throw e;
    } catch (RuntimeException e) {
      if (builtIn) {
        throw e;
      }
      return refused(Texts.of("pdf.pdf_page.page_on_which_layout_fails", e.getMessage()));
    }
  }

  private Checked<byte[]> refused(String found) {
    return Checked.refused(
        List.of(
            new Problem(
                ProblemCode.TEMPLATE_BROKEN,
                SourceLocation.file("templates/" + template),
                found,
                Texts.of("pdf.pdf_page.page_of_at_most_pages", BoundedLayout.MOST_PAGES),
                Texts.of("pdf.pdf_page.correct_template_and_its_style"))));
  }

  private byte[] laidOut(
      String html, PdfMetadata heading, Supplier<List<PdfAttachment>> attachments)
      throws IOException {
    PdfRendererBuilder builder =
        new PdfRendererBuilder()
            .withW3cDocument(PdfMarkup.document(html), "")
            .usePdfVersion(PDF_VERSION)
            .usePdfAConformance(PdfRendererBuilder.PdfAConformance.PDFA_3_A)
            .usePdfUaAccessibility(true)
            .useColorProfile(SrgbProfile.bytes())
            .useProtocolsStreamImplementation(this::figure, FIGURE_SCHEME)
            .useProtocolsStreamImplementation(PdfPage::font, PdfFonts.SCHEME)
            .useExternalResourceAccessControl(
                (address, type) -> isAllowed(address),
                ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI)
            .useFastMode();
    try (ChartDrawer drawer = new ChartDrawer(charts);
        PdfBoxRenderer renderer = builder.useSVGDrawer(drawer).buildPdfRenderer()) {
      renderer.setListener(BoundedLayout.countingPages());
      try (PDDocument document = renderer.createPDFKeepOpen()) {
        List<PdfAttachment> attached = attachments.get();
        return new PdfFinish(document, heading).bytes(attached, hash(html, heading, attached));
      }
    }
  }

  /** Returns true for charts and embedded data; templates cannot access files or web addresses. */
  private static boolean isAllowed(String address) {
    return List.of(FIGURE_SCHEME, PdfFonts.SCHEME, "data").stream()
        .anyMatch(scheme -> address.startsWith(scheme + ":"));
  }

  private FSStream figure(String address) {
    String name = address.substring(FIGURE_SCHEME.length() + 1).replaceFirst("\\.svg$", "");
    if (!charts.containsKey(name)) {
      throw new IllegalArgumentException("no chart has the address " + address);
    }
    return new TextStream(ChartDrawer.placeholder(name));
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

  private static byte[] hash(String html, PdfMetadata heading, List<PdfAttachment> attachments) {
    MessageDigest digest = InputHash.newDigest();
    digest.update(html.getBytes(StandardCharsets.UTF_8));
    digest.update(heading.words().getBytes(StandardCharsets.UTF_8));
    attachments.forEach(a -> digest.update(a.bytes()));
    return digest.digest();
  }

  /** Prepares the output of a template for layout: well-formed, with bookmarks. */
  private static final class PdfMarkup {
    private PdfMarkup() {}

    /** Maximum nesting depth of elements. */
    static final int MOST_LEVELS = 400;

    /**
     * Returns the page as a tree.
     *
     * @throws LayoutException if it is nested too deeply to be laid out
     */
    static org.w3c.dom.Document document(String html) {
      org.jsoup.nodes.Document page = Jsoup.parse(html);
      page.traverse(
          (node, depth) -> {
            if (depth > MOST_LEVELS) {
              throw new LayoutException(Texts.of("pdf.pdf_markup.elements_within_each_other_on"));
            }
          });
      fonts(page);
      bookmarks(page);
      page.select("a[href]:not([title])").forEach(a -> a.attr("title", a.text()));
      return new W3CDom().fromJsoup(page);
    }

    private static void fonts(org.jsoup.nodes.Document page) {
      page.head().prependElement("style").appendChild(new DataNode(PdfFonts.rules()));
    }

    /** Adds the outline of the PDF: sections and subsections. */
    private static void bookmarks(org.jsoup.nodes.Document page) {
      Element root = page.head().appendElement("bookmarks");
      Element section = root;
      int count = 0;
      for (Element heading : page.select("h2, h3")) {
        count++;
        if (heading.id().isEmpty()) {
          heading.attr("id", "heading-" + count);
        }
        boolean top = heading.normalName().equals("h2");
        Element parent = top ? root : section;
        Element bookmark = parent.appendElement("bookmark");
        bookmark.attr("name", heading.text()).attr("href", "#" + heading.id());
        if (top) {
          section = bookmark;
        }
      }
    }
  }
}
