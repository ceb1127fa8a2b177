package taperbook;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import taperbook.input.folder.RegularFile;

/**
 * The folder for temporary files. The program stores nothing there, but Java stores each font there
 * while loading it.
 *
 * @see java.awt.Font#createFont(int, java.io.InputStream)
 */
final class TemporaryFolder {
  /** The size of a large font plus a margin. */
  private static final int BYTES = 2 << 20;

  private TemporaryFolder() {}

  /** Returns the cause of an input or output failure, if nothing can be stored in that folder. */
  static Optional<String> reasonOf(Throwable failure) {
    for (Throwable each = failure; each != null; each = each.getCause()) {
      if (each instanceof IOException) {
        return unusable(System.getProperty("java.io.tmpdir", ""));
      }
    }
    return Optional.empty();
  }

  private static Optional<String> unusable(String folder) {
    try {
      Path file = Path.of(folder).resolve("taperbook-" + UUID.randomUUID());
      try (OutputStream out = RegularFile.create(file)) {
        out.write(new byte[BYTES]);
      } finally {
        Files.deleteIfExists(file);
      }
      return Optional.empty();
    } catch (IOException | InvalidPathException e) {
      return Optional.of(
          "the folder for temporary files, "
              + folder
              + ", is missing, full or may not be written, and Java needs it to read fonts. Nothing"
              + " published changed. Mend it, or name another with"
              + " JAVA_TOOL_OPTIONS=-Djava.io.tmpdir=DIR, then run again.");
    }
  }
}
