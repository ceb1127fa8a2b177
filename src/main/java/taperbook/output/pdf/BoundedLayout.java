package taperbook.output.pdf;

import com.openhtmltopdf.pdfboxout.PDFCreationListener;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * Lays out a page with limits on pages and time. The library cannot be interrupted: a layout that
 * takes too long is abandoned on a daemon thread.
 */
final class BoundedLayout extends Thread {
  /** Maximum number of pages of a PDF; {@code verify} has the same limit. */
  static final int MOST_PAGES = 5000;

  private static final long MOST_SECONDS = 600;
  private static final long STACK_BYTES = 64L << 20;

  private final Work work;
  private byte[] pdf = new byte[0];
  private @Nullable Throwable failure;

  private BoundedLayout(Work work) {
    super(null, null, "layout", STACK_BYTES);
    this.work = work;
    setDaemon(true);
  }

  /** The layout task. */
  interface Work {
    byte[] pdf() throws IOException;
  }

  /**
   * Returns the PDF.
   *
   * @throws LayoutException if layout fails for a reason that may be in the template
   * @throws IOException if it cannot be written
   */
  static byte[] of(Work work) throws IOException {
    BoundedLayout layout = new BoundedLayout(work);
    layout.start();
    try {
      TimeUnit.SECONDS.timedJoin(layout, MOST_SECONDS);
    } catch (InterruptedException e) {
      layout.interrupt();
      throw new IllegalStateException("interrupted while a page is laid out", e);
    }
    if (layout.isAlive()) {
      layout.interrupt();
      throw new LayoutException("pages that are not laid out within " + MOST_SECONDS + " s");
    }
    return layout.outcome();
  }

  private byte[] outcome() throws IOException {
    if (failure instanceof IOException e) {
      throw e;
    }
    if (failure instanceof StackOverflowError) {
      throw new LayoutException("elements within each other too deep");
    }
    if (failure instanceof OutOfMemoryError) {
      throw new LayoutException("pages that need more memory than there is");
    }
    if (failure instanceof RuntimeException e) {
      throw e;
    }
    if (failure instanceof Error e) {
      throw e;
    }
    return pdf;
  }

  @Override
  public void run() {
    try {
      pdf = work.pdf();
    } catch (IOException | RuntimeException | Error e) {
      failure = e;
    }
  }

  /** Rejects documents with too many pages before they are drawn. */
  static PDFCreationListener countingPages() {
    return new PDFCreationListener() {
      @Override
      public void preOpen(PdfBoxRenderer renderer) {
        int pages = renderer.getRootBox().getLayer().getPages().size();
        if (pages > MOST_PAGES) {
          throw new LayoutException(pages + " pages, where a PDF has at most " + MOST_PAGES);
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
