package taperbook.output.pdf;

import com.openhtmltopdf.util.XRLog;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.pdmodel.font.FontMappers;

/**
 * Silences the loggers of the layout libraries, whose messages are irrelevant to users, and
 * prevents access to system fonts.
 */
public final class LibraryLogging {
  /** Strong references: a logger that is garbage-collected loses its level. */
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

  /** Silences the loggers once, before anything is written. */
  public static void silenceLoggers() {
    // Class initialisation does the work; this call triggers it.
  }
}
