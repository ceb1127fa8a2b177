package taperbook.app.publish;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import taperbook.app.looks.Standing;
import taperbook.app.project.StoppedException;

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
    return Files.exists(file(reports, name));
  }

  private static Path file(Path reports, String name) {
    return Standing.lock(reports, name);
  }

  /** Waits until no other run makes the report, and keeps others from it until closed. */
  public static ReportLock of(Path reports, String name) {
    Path file = file(reports, name);
    boolean waited = false;
    try {
      while (true) {
        FileChannel channel =
            FileChannel.open(
                file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
        if (isHeld(channel) && isStillThere(file, channel)) {
          return new ReportLock(file, channel, waited);
        }
        channel.close();
        waited = true;
        Thread.sleep(MILLISECONDS_BETWEEN_LOOKS);
      }
    } catch (IOException e) {
      // Where no lock can be written, no report can: writing it says so better.
      return new ReportLock(file, null, waited);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new StoppedException("interrupted while another run makes the report", e);
    }
  }

  private static boolean isHeld(FileChannel channel) throws IOException {
    try {
      FileLock lock = channel.tryLock();
      return lock != null;
    } catch (OverlappingFileLockException e) {
      return false;
    }
  }

  /** False if the run before took the file away after this one had opened it. */
  private static boolean isStillThere(Path file, FileChannel channel) throws IOException {
    String token = UUID.randomUUID().toString();
    channel.truncate(0).write(ByteBuffer.wrap(token.getBytes(StandardCharsets.UTF_8)));
    return Files.exists(file) && Files.readString(file).equals(token);
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
