package taperbook.workspace;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import taperbook.i18n.Texts;
import taperbook.input.folder.RegularFile;
import taperbook.uptodate.OutputStatus;

/**
 * Prevents two runs from building the same report at the same time: the second one waits. The
 * operating system releases the lock when a process ends for any reason.
 */
public final class ReportLock implements AutoCloseable {
  private static final int MILLISECONDS_BETWEEN_LOOKS = 50;
  private static final int MAX_DENIED = 10;

  private final Path file;
  private final @Nullable FileChannel channel;
  private final boolean waited;

  private ReportLock(Path file, @Nullable FileChannel channel, boolean waited) {
    this.file = file;
    this.channel = channel;
    this.waited = waited;
  }

  /** Returns true if a run is active, or was killed while it was active. */
  public static boolean exists(Path reports, String name) {
    return RegularFile.exists(file(reports, name));
  }

  private static Path file(Path reports, String name) {
    return OutputStatus.lock(reports, name);
  }

  /**
   * Waits until no other run builds the report, and locks it until closed.
   *
   * @throws StoppedException if the lock's path is a link or anything but a file
   */
  public static ReportLock of(Path reports, String name) {
    Path file = file(reports, name);
    boolean waited = false;
    int denied = 0;
    try {
      while (true) {
        try {
          Optional<FileChannel> mine = created(file);
          if (mine.isPresent()) {
            return new ReportLock(file, mine.get(), waited);
          }
          if (isLeftBehind(file)) {
            continue;
          }
          waited = true;
        } catch (IOException e) {
          // Windows denies access to a file that another run has just locked, or deletes.
          denied++;
          if (denied == MAX_DENIED || !Files.isWritable(reports)) {
            throw e;
          }
        }
        Thread.sleep(MILLISECONDS_BETWEEN_LOOKS);
      }
    } catch (IOException e) {
      if (e instanceof AccessDeniedException && RegularFile.exists(file)) {
        throw StoppedException.reservedPath(file);
      }
      // If the lock file cannot be written, neither can the report, and writing the report gives
      // the clearer error.
      return new ReportLock(file, null, waited);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new StoppedException(
          Texts.of("project.report_lock.interrupted_while_another_run_makes"), e);
    }
  }

  /**
   * Locks a file that this run creates; returns empty if the file exists, or if another run removed
   * it as a leftover before it was locked.
   */
  private static Optional<FileChannel> created(Path file) throws IOException {
    FileChannel channel;
    try {
      channel =
          FileChannel.open(
              file,
              StandardOpenOption.CREATE_NEW,
              StandardOpenOption.READ,
              StandardOpenOption.WRITE);
    } catch (FileAlreadyExistsException e) {
      return Optional.empty();
    }
    boolean mine = false;
    try {
      String token = UUID.randomUUID().toString();
      channel.write(ByteBuffer.wrap(token.getBytes(StandardCharsets.UTF_8)));
      String status = status(file);
      mine = reads(file, token) && isHeld(channel) && status.equals(status(file));
      return mine ? Optional.of(channel) : Optional.empty();
    } catch (IOException e) {
      Files.deleteIfExists(file);
      throw e;
    } finally {
      if (!mine) {
        channel.close();
      }
    }
  }

  /**
   * Must not be called while holding the lock: a process that closes any handle of a file loses its
   * lock.
   */
  private static boolean reads(Path file, String token) throws IOException {
    try {
      return new String(RegularFile.bytes(file, token.length()), StandardCharsets.UTF_8)
          .equals(token);
    } catch (FileSystemException e) {
      return false;
    }
  }

  /**
   * Returns a value that distinguishes a file from its replacement, without opening it; empty if
   * there is no file.
   */
  private static String status(Path file) throws IOException {
    try {
      BasicFileAttributes seen =
          Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
      if (!seen.isRegularFile()) {
        throw StoppedException.reservedPath(file);
      }
      return seen.fileKey() + " " + seen.lastModifiedTime();
    } catch (NoSuchFileException e) {
      return "";
    }
  }

  /** Deletes the file and returns true if it is a leftover of a killed run. */
  private static boolean isLeftBehind(Path file) throws IOException {
    String status = status(file);
    if (status.isEmpty()) {
      return true;
    }
    try (FileChannel channel =
        FileChannel.open(
            file, StandardOpenOption.READ, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS)) {
      if (!isHeld(channel)) {
        return false;
      }
      // The file is never read or written: it may be a hard link to a file elsewhere.
      if (status.equals(status(file))) {
        Files.deleteIfExists(file);
      }
      return true;
    } catch (NoSuchFileException e) {
      return true;
    }
  }

  /** Returns true if this run holds the lock. */
  private static boolean isHeld(FileChannel channel) throws IOException {
    try {
      return channel.tryLock() != null;
    } catch (OverlappingFileLockException e) {
      return false;
    }
  }

  /** Returns true if another run held the lock when this one requested it. */
  public boolean waited() {
    return waited;
  }

  @Override
  public void close() {
    if (channel == null) {
      return;
    }
    try {
      Files.deleteIfExists(file);
      channel.close();
    } catch (IOException e) {
      throw new StoppedException(
          Texts.of("project.report_lock.file_cannot_be_taken_away", file, e), e);
    }
  }
}
