package taperbook.endtoend;

import java.io.IOException;
import java.nio.file.Path;
import taperbook.workspace.ReportLock;

/** A process that has the lock of the report {@code look} until it is killed. */
final class LockHolder {
  private LockHolder() {}

  /** Acquires the lock in the folder given as the first argument, and prints a line. */
  public static void main(String[] arguments) throws IOException {
    try (ReportLock lock = ReportLock.of(Path.of(arguments[0]), "look")) {
      System.out.println("holds " + !lock.waited());
      System.out.flush();
      System.in.read();
    }
  }

  /** Starts a process and returns when it has the lock. */
  static Process start(Path reports) throws IOException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                LockHolder.class.getName(),
                reports.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    if (process.getInputStream().read() != 'h') {
      throw new IllegalStateException("it has no lock");
    }
    return process;
  }
}
