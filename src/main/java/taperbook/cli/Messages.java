package taperbook.cli;

import java.io.PrintStream;
import java.util.List;
import taperbook.buildinfo.BuildInfo;
import taperbook.diagnostics.Printable;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.Severity;

/**
 * Says things to the person: results on one stream, progress and problems on the other. On a
 * terminal lines are broken at words; in files and pipes each stays whole.
 *
 * <p>Whatever is printed goes through {@link Printable} here, in files and pipes as well, since a
 * name or a cell may hold codes that a terminal obeys.
 */
public final class Messages {
  private static final String HANGING = " ".repeat(14);

  private final PrintStream out;
  private final PrintStream err;
  private final Terminal terminal;
  private final ProgressLine progress;
  private final Colour resultColour;
  private final Colour messageColour;

  public Messages(PrintStream out, PrintStream err, ProcessContext surroundings) {
    this.out = out;
    this.err = err;
    this.terminal = surroundings.terminal();
    this.progress = new ProgressLine(err, terminal, surroundings.pulse());
    boolean allowed = surroundings.colourAllowed();
    this.resultColour = new Colour(allowed && terminal.results());
    this.messageColour = new Colour(allowed && terminal.messages());
  }

  /** A number of things in words, such as {@code 1 error} or {@code 2 errors}. */
  public static String count(long number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  /** Says what is going on, on a terminal only; the next message takes its place. */
  public void progress(int done, int all, String what) {
    progress.begin(done, all, what);
  }

  /** Says what is going on within the thing that {@link #progress} named. */
  public ProgressListener steps() {
    return progress::step;
  }

  /** Takes away what was said to be going on. */
  public void endProgress() {
    progress.end();
  }

  /** A line of result. It is not broken within an amount, where no-break spaces stand. */
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
   * A text of many lines that is fitted to the width already.
   *
   * @see #width()
   */
  public void text(String text) {
    progress.clear();
    out.print(Printable.ofLines(text));
  }

  /** Characters in a line of results. */
  public int width() {
    return terminal.results() ? terminal.width() : Terminal.USUAL_WIDTH;
  }

  /**
   * What became of a thing.
   *
   * @param name the thing
   * @param what what became of it, such as {@code refused}
   */
  public void outcome(String name, String what) {
    progress.clear();
    boolean refused = what.startsWith("refused");
    String shown = Printable.of(what);
    out.println(
        resultColour.strong(Printable.of(name))
            + "  "
            + (refused ? resultColour.bad(shown) : shown));
  }

  /** Every problem, place first. */
  public void problems(List<Problem> problems) {
    progress.clear();
    for (Problem problem : problems) {
      boolean error = problem.severity() == Severity.ERROR;
      String word = problem.severity().word();
      err.println(
          (error ? messageColour.bad(word) : messageColour.doubtful(word))
              + "  "
              + messageColour.strong(Printable.of(problem.place().toString())));
      said("    found     " + problem.found(), HANGING);
      said("    expected  " + problem.expected(), HANGING);
      said("    to mend   " + problem.remedy(), HANGING);
      err.println("    [" + problem.code().slug() + "]");
    }
  }

  /** A remark on the way. */
  public void remark(String line) {
    progress.clear();
    said(line, LineWrapping.hanging(line, terminal.width()));
  }

  private void said(String line, String hanging) {
    lines(Printable.of(line), hanging, terminal.messages()).forEach(err::println);
  }

  /** Sees to it that all that was said is seen. */
  public void flush() {
    out.flush();
    err.flush();
  }

  /** Something outside the input stands in the way. */
  public void stopped(String why) {
    progress.clear();
    said("taperbook: " + why, "  ");
  }

  /** The program failed. */
  @SuppressWarnings("ReferenceEquality") // The very fault, and not one like it.
  public void ourFault(Throwable fault) {
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
