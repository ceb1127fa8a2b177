package taperbook.output.pdf;

import com.openhtmltopdf.pdfboxout.PDFCreationListener;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * Lays a page out with a bound on its pages and its time. The library cannot be asked to stop:
 * layout that takes too long is left behind on a thread that does not keep the process alive.
 */
final class BoundedLayout extends Thread {
  /** Most pages of a PDF: {@code verify} reads no more. */
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

  /** What is laid out. */
  interface Work {
    byte[] pdf() throws IOException;
  }

  /**
   * Returns the PDF.
   *
   * @throws LayoutException if there is none, for a reason that may lie in the template
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

  /** Refuses pages before they are drawn if there are too many. */
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
        // The pages were counted already.
      }

      @Override
      public void onClose(PdfBoxRenderer renderer) {
        // Nothing was opened here.
      }
    };
  }
}
