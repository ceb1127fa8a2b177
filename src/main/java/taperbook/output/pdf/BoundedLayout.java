package taperbook.output.pdf;

import com.openhtmltopdf.pdfboxout.PDFCreationListener;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import java.io.IOException;
import taperbook.diagnostics.BoundedTask;
import taperbook.i18n.Texts;

/** Lays out a page with limits on pages and time. */
final class BoundedLayout {
  /** Maximum number of pages of a PDF; {@code verify} has the same limit. */
  static final int MOST_PAGES = 5000;

  private static final int MOST_SECONDS = 600;
  private static final long STACK_BYTES = 64L << 20;

  private BoundedLayout() {}

  /**
   * Returns the PDF.
   *
   * @throws LayoutException if layout fails for a reason that may be in the template
   * @throws IOException if it cannot be written
   */
  static byte[] of(BoundedTask.Work<byte[], IOException> work) throws IOException {
    try {
      return BoundedTask.within(
          MOST_SECONDS,
          BoundedTask.ANY_MEMORY,
          task -> new Thread(null, task, "layout", STACK_BYTES),
          work);
    } catch (BoundedTask.LimitExceeded e) {
      throw new LayoutException(
          Texts.of("pdf.bounded_layout.pages_that_are_not_laid", MOST_SECONDS));
    } catch (StackOverflowError e) {
      throw new LayoutException(Texts.of("pdf.bounded_layout.elements_within_each_other_too"));
    } catch (OutOfMemoryError e) {
      throw new LayoutException(Texts.of("pdf.bounded_layout.pages_that_need_more_memory"));
    }
  }

  /** Rejects documents with too many pages before they are drawn. */
  static PDFCreationListener countingPages() {
    return new PDFCreationListener() {
      @Override
      public void preOpen(PdfBoxRenderer renderer) {
        int pages = renderer.getRootBox().getLayer().getPages().size();
        if (pages > MOST_PAGES) {
          throw new LayoutException(
              Texts.of("pdf.bounded_layout.pages_where_pdf_has_at", pages, MOST_PAGES));
        }
      }

      @Override
      public void preWrite(PdfBoxRenderer renderer, int pageCount) {
        // The pages are already counted.
      }

      @Override
      public void onClose(PdfBoxRenderer renderer) {
        // No document is open.
      }
    };
  }
}
