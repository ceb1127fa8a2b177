package taperbook.workspace;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * Renames and deletes, and tries again for a second: on Windows both fail while any program, such
 * as a virus scanner, has the file open, or a file below the folder.
 */
class RetryingFiles {
  private static final int TRIES = 10;
  private static final int MILLISECONDS_BETWEEN_TRIES = 100;

  private interface Operation {
    void run() throws IOException;
  }

  /** Renames a file or folder to a name that is free. */
  final void move(Path from, Path to) throws IOException {
    retry(() -> tryToMove(from, to));
  }

  /** Deletes a file, an empty folder, or a link rather than its target. */
  final void delete(Path path) throws IOException {
    retry(() -> Files.delete(path));
  }

  /** Renames once. */
  void tryToMove(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, LinkOption.NOFOLLOW_LINKS);
    }
  }

  private static void retry(Operation operation) throws IOException {
    for (int tries = 1; ; tries++) {
      try {
        operation.run();
        return;
      } catch (NoSuchFileException | FileAlreadyExistsException | DirectoryNotEmptyException e) {
        throw e;
      } catch (FileSystemException e) {
        if (tries == TRIES) {
          throw e;
        }
        pause();
      }
    }
  }

  private static void pause() throws InterruptedIOException {
    try {
      Thread.sleep(MILLISECONDS_BETWEEN_TRIES);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException();
    }
  }
}
