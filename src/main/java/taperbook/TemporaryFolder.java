package taperbook;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import taperbook.i18n.Texts;
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

  /**
   * Returns the cause of a failure, if nothing can be stored in that folder. A class whose fonts
   * could not be stored is missing for every other thread, without the cause.
   */
  static Optional<String> reasonOf(Throwable failure) {
    for (Throwable each = failure; each != null; each = each.getCause()) {
      if (each instanceof IOException || each instanceof NoClassDefFoundError) {
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
          Texts.of("command.temporary_folder.folder_for_temporary_files_is", folder));
    }
  }
}
