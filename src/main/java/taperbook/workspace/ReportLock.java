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
import taperbook.input.folder.RegularFile;
import taperbook.uptodate.OutputStatus;

/**
 * Keeps two runs from making the same report at the same time: the second one waits. The operating
 * system lets go of the lock when a process ends, however it ends.
 */
public final class ReportLock implements AutoCloseable {
  private static final int MILLISECONDS_BETWEEN_LOOKS = 50;

  private final Path file;
  private final @Nullable FileChannel channel;
  private final boolean waited;

  private ReportLock(Path file, @Nullable FileChannel channel, boolean waited) {
    this.file = file;
    this.channel = channel;
    this.waited = waited;
  }

  /** True if a run is at work, or was killed at work. */
  public static boolean isThere(Path reports, String name) {
    return RegularFile.isThere(file(reports, name));
  }

  private static Path file(Path reports, String name) {
    return OutputStatus.lock(reports, name);
  }

  /**
   * Waits until no other run makes the report, and keeps others from it until closed.
   *
   * @throws StoppedException if a link or anything but a file has the lock's name
   */
  public static ReportLock of(Path reports, String name) {
    Path file = file(reports, name);
    boolean waited = false;
    try {
      while (true) {
        Optional<FileChannel> mine = created(file);
        if (mine.isPresent()) {
          return new ReportLock(file, mine.get(), waited);
        }
        if (!isLeftBehind(file)) {
          waited = true;
          Thread.sleep(MILLISECONDS_BETWEEN_LOOKS);
        }
      }
    } catch (IOException e) {
      // Where no lock can be written, no report can: writing it says so better.
      return new ReportLock(file, null, waited);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new StoppedException("interrupted while another run makes the report", e);
    }
  }

  /**
   * The lock on a file that this run creates; none if there is one already, or if another run took
   * this one for left behind before it was locked.
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
      String look = look(file);
      mine = reads(file, token) && isHeld(channel) && look.equals(look(file));
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

  /** Not to be asked under the lock: a process that closes any handle of a file loses its lock. */
  private static boolean reads(Path file, String token) throws IOException {
    try {
      return new String(RegularFile.bytes(file, token.length()), StandardCharsets.UTF_8)
          .equals(token);
    } catch (FileSystemException e) {
      return false;
    }
  }

  /** What tells a file from one that took its place, without opening it; empty if none is there. */
  private static String look(Path file) throws IOException {
    try {
      BasicFileAttributes seen =
          Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
      if (!seen.isRegularFile()) {
        throw StoppedException.inThePlaceOf(file);
      }
      return seen.fileKey() + " " + seen.lastModifiedTime();
    } catch (NoSuchFileException e) {
      return "";
    }
  }

  /** True if the file was left behind by a run that was killed; then it is taken away. */
  private static boolean isLeftBehind(Path file) throws IOException {
    String look = look(file);
    if (look.isEmpty()) {
      return true;
    }
    try (FileChannel channel = opened(file)) {
      if (!isHeld(channel)) {
        return false;
      }
      // It is never read or written: it may be another name of a file elsewhere.
      if (look.equals(look(file))) {
        Files.deleteIfExists(file);
      }
      return true;
    } catch (NoSuchFileException e) {
      return true;
    }
  }

  private static FileChannel opened(Path file) throws IOException {
    try {
      return FileChannel.open(
          file, StandardOpenOption.READ, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
    } catch (AccessDeniedException e) {
      throw StoppedException.inThePlaceOf(file);
    }
  }

  /** True if this run has the lock now. */
  private static boolean isHeld(FileChannel channel) throws IOException {
    try {
      return channel.tryLock() != null;
    } catch (OverlappingFileLockException e) {
      return false;
    }
  }

  /** True if another run had the lock when this one asked for it. */
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
      throw new StoppedException("the file " + file + " cannot be taken away: " + e, e);
    }
  }
}
