package taperbook;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import taperbook.cli.ExitStatus;
import taperbook.cli.ProcessContext;

/** The program's entry point. */
public final class Main {
  private Main() {}

  /** Runs one command and ends the process with its exit status. */
  public static void main(String[] arguments) {
    // On Linux, Java's font manager would write a list of fonts to the user's home. The program
    // reads and writes nothing there, so it sets no valid home.
    System.setProperty("user.home", "/dev/null");
    PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
    PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
    ExitStatus status =
        new CommandLine(out, err, ProcessContext.ofProcess()).run(List.of(arguments));
    out.flush();
    err.flush();
    System.exit(status.code());
  }
}
