package taperbook.output.pdf;

import com.openhtmltopdf.util.XRLog;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.pdmodel.font.FontMappers;

/**
 * Keeps the libraries that lay out pages to themselves: what they log is not a user's business, and
 * they have no business with the system's fonts.
 */
public final class LibraryLogging {
  /** Held, since a logger that nobody holds is forgotten together with its level. */
  private static final List<Logger> LOGGERS =
      List.of(
          Logger.getLogger("org.apache.pdfbox"),
          Logger.getLogger("org.apache.fontbox"),
          Logger.getLogger("org.apache.batik"),
          Logger.getLogger("com.openhtmltopdf"));

  static {
    LOGGERS.forEach(logger -> logger.setLevel(Level.OFF));
    XRLog.setLoggingEnabled(false);
    FontMappers.set(new BundledFonts());
  }

  private LibraryLogging() {}

  /** Does so once, before anything is written. */
  public static void silenceLoggers() {
    // The work is done when the class is loaded; this is where it is called for.
  }
}
