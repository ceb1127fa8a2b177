package taperbook.cli;

import java.io.PrintStream;
import java.util.List;
import taperbook.buildinfo.BuildInfo;
import taperbook.diagnostics.Printable;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.Severity;

/**
 * Writes messages to the user: results to one stream, progress and problems to the other. Lines are
 * wrapped on a terminal but not in files and pipes.
 *
 * <p>All output is escaped with {@link Printable}, also in files and pipes, because a name or a
 * cell may contain control sequences.
 */
public final class Messages {
  private static final String HANGING = " ".repeat(14);

  private final PrintStream out;
  private final PrintStream err;
  private final Terminal terminal;
  private final ProgressLine progress;
  private final Colour resultColour;
  private final Colour messageColour;

  public Messages(PrintStream out, PrintStream err, ProcessContext processContext) {
    this.out = out;
    this.err = err;
    this.terminal = processContext.terminal();
    this.progress = new ProgressLine(err, terminal, processContext.clock());
    boolean allowed = processContext.colourAllowed();
    this.resultColour = new Colour(allowed && terminal.results());
    this.messageColour = new Colour(allowed && terminal.messages());
  }

  /** Formats a count with its noun, such as {@code 1 error} or {@code 2 errors}. */
  public static String count(long number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  /** Shows progress on a terminal only; the next message replaces it. */
  public void progress(int done, int all, String what) {
    progress.begin(done, all, what);
  }

  /** Returns a listener that shows the steps within the item that {@link #progress} named. */
  public ProgressListener steps() {
    return progress::step;
  }

  /** Removes the progress line. */
  public void endProgress() {
    progress.end();
  }

  /**
   * Writes a line of results. It is not wrapped inside an amount, which contains no-break spaces.
   */
  public void result(String text) {
    progress.clear();
    String line = Printable.of(text);
    lines(line, LineWrapping.hanging(line, terminal.width()), terminal.results())
        .forEach(each -> out.println(each.replace('\u00a0', ' ')));
  }

  private List<String> lines(String line, String hanging, boolean broken) {
    return broken ? LineWrapping.lines(line, hanging, terminal.width()) : List.of(line);
  }

  /**
   * Writes a text of several lines that is already wrapped to the width.
   *
   * @see #width()
   */
  public void text(String text) {
    progress.clear();
    out.print(Printable.ofLines(text));
  }

  /** Returns the line width of results, characters. */
  public int width() {
    return terminal.results() ? terminal.width() : Terminal.DEFAULT_WIDTH;
  }

  /**
   * Writes the outcome of an item.
   *
   * @param name the item
   * @param what its outcome, such as {@code refused}
   */
  public void outcome(String name, String what) {
    progress.clear();
    boolean refused = what.startsWith("refused");
    String shown = Printable.of(what);
    out.println(
        resultColour.emphasized(Printable.of(name))
            + "  "
            + (refused ? resultColour.error(shown) : shown));
  }

  /** Writes all problems, each beginning with its place. */
  public void problems(List<Problem> problems) {
    progress.clear();
    for (Problem problem : problems) {
      boolean error = problem.severity() == Severity.ERROR;
      String word = problem.severity().word();
      err.println(
          (error ? messageColour.error(word) : messageColour.warning(word))
              + "  "
              + messageColour.emphasized(Printable.of(problem.place().toString())));
      writeMessage("    found     " + problem.found(), HANGING);
      writeMessage("    expected  " + problem.expected(), HANGING);
      writeMessage("    to mend   " + problem.remedy(), HANGING);
      err.println("    [" + problem.code().slug() + "]");
    }
  }

  /** Writes a remark. */
  public void remark(String line) {
    progress.clear();
    writeMessage(line, LineWrapping.hanging(line, terminal.width()));
  }

  private void writeMessage(String line, String hanging) {
    lines(Printable.of(line), hanging, terminal.messages()).forEach(err::println);
  }

  /** Flushes all output. */
  public void flush() {
    out.flush();
    err.flush();
  }

  /** Reports an obstacle other than invalid input. */
  public void stopped(String why) {
    progress.clear();
    writeMessage("taperbook: " + why, "  ");
  }

  /** Reports a failure of the program. */
  @SuppressWarnings("ReferenceEquality") // Compares identity, not equality
  public void programFailed(Throwable fault) {
    progress.clear();
    err.println("taperbook: a fault of the program, not of your input. Nothing published changed.");
    err.println("Please report it with these lines and, if you can, the folder it happened in:");
    err.println("  " + BuildInfo.ofThisProgram().name() + ", Java " + Runtime.version());
    for (Throwable each = fault; each != null; each = each.getCause()) {
      err.println((each == fault ? "" : "Caused by: ") + Printable.of(each.toString()));
      for (StackTraceElement element : each.getStackTrace()) {
        err.println("    at " + Printable.of(element.toString()));
      }
    }
  }
}
