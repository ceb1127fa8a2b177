package taperbook.app;

import java.io.PrintStream;
import java.util.List;
import taperbook.problem.Problem;
import taperbook.problem.Severity;

/** Says things to the person: results on one stream, progress and problems on the other. */
final class Messages {
  private static final String CLEAR_LINE = "\r\u001b[2K";
  private static final String RED = "\u001b[31m";
  private static final String PLAIN = "\u001b[0m";

  private final PrintStream out;
  private final PrintStream err;
  private final Surroundings surroundings;
  private boolean progressShown;

  Messages(PrintStream out, PrintStream err, Surroundings surroundings) {
    this.out = out;
    this.err = err;
    this.surroundings = surroundings;
  }

  /** A number of things in words, such as {@code 1 error} or {@code 2 errors}. */
  static String count(long number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  /** Says what is going on, on a terminal only; the next message takes its place. */
  void progress(int done, int all, String what) {
    if (surroundings.terminal()) {
      err.print(CLEAR_LINE + "[" + done + "/" + all + "] " + what);
      err.flush();
      progressShown = true;
    }
  }

  private void endProgress() {
    if (progressShown) {
      err.print(CLEAR_LINE);
      progressShown = false;
    }
  }

  /** A line of result. */
  void result(String line) {
    endProgress();
    out.println(line);
  }

  /** Every problem, place first. */
  void problems(List<Problem> problems) {
    endProgress();
    for (Problem problem : problems) {
      boolean error = problem.severity() == Severity.ERROR;
      String word = problem.severity().word();
      err.println((error ? coloured(word) : word) + "  " + problem.place());
      err.println("    found     " + problem.found());
      err.println("    expected  " + problem.expected());
      err.println("    to mend   " + problem.remedy());
      err.println("    [" + problem.code().slug() + "]");
    }
  }

  private String coloured(String word) {
    return surroundings.colour() ? RED + word + PLAIN : word;
  }

  /** A remark on the way. */
  void remark(String line) {
    endProgress();
    err.println(line);
  }

  /** Sees to it that all that was said is seen. */
  void flush() {
    out.flush();
    err.flush();
  }

  /** Something outside the input stands in the way. */
  void stopped(String why) {
    endProgress();
    err.println("taperbook: " + why);
  }

  /** The program failed. */
  void ourFault(Throwable fault) {
    endProgress();
    err.println("taperbook: a fault of the program, not of your input. Nothing published changed.");
    err.println("Please report it with these lines and, if you can, the folder it happened in:");
    err.println("  " + ProgramStamp.ofThisProgram().name() + ", Java " + Runtime.version());
    fault.printStackTrace(err);
  }
}
