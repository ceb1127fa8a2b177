package taperbook.endtoend;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** A small disk in memory, which root can mount on Linux; elsewhere the test is skipped. */
final class SmallDisk implements AutoCloseable {
  private static final long SECONDS = 20;

  private final Path folder;

  private SmallDisk(Path folder) {
    this.folder = folder;
  }

  /** Mounts a disk of the given size in MiB at an unused path. */
  static SmallDisk of(Path folder, int mebibytes) throws IOException {
    Files.createDirectories(folder);
    String size = "size=" + mebibytes + "m";
    boolean mounted = done("mount", "-t", "tmpfs", "-o", size, "tmpfs", folder.toString());
    assumeTrue(mounted, "a small disk can be mounted by root on Linux only");
    return new SmallDisk(folder);
  }

  Path folder() {
    return folder;
  }

  /** Fills the disk except for the given number of bytes; deleting the file frees the space. */
  Path fill(int bytesLeft) throws IOException {
    FileStore store = Files.getFileStore(folder);
    int size = (int) (store.getUsableSpace() - bytesLeft);
    return Files.write(folder.resolve("filler"), new byte[size]);
  }

  @Override
  public void close() throws IOException {
    if (!done("umount", folder.toString())) {
      throw new IOException(folder + " is still mounted");
    }
  }

  private static boolean done(String... command) {
    try {
      Process process =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      return process.waitFor(SECONDS, TimeUnit.SECONDS) && process.exitValue() == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      throw new IllegalStateException("interrupted", e);
    }
  }
}
