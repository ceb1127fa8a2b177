package taperbook.cli;

import java.io.PrintStream;
import java.util.List;
import taperbook.buildinfo.BuildInfo;
import taperbook.diagnostics.Printable;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.Severity;
import taperbook.i18n.Texts;

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

  /**
   * Shows progress on a terminal, where the next message replaces it, or logs that of long work.
   */
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
   * @param what what was made of it
   */
  public void outcome(String name, String what) {
    writeOutcome(name, Printable.of(what));
  }

  /** Writes that an item was refused. */
  public void refused(String name) {
    writeOutcome(name, resultColour.error(Texts.of("command.messages.refused")));
  }

  private void writeOutcome(String name, String shown) {
    progress.clear();
    out.println(resultColour.emphasized(Printable.of(name)) + "  " + shown);
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
      writeMessage(Texts.of("command.messages.found", problem.found()), HANGING);
      writeMessage(Texts.of("command.messages.expected", problem.expected()), HANGING);
      writeMessage(Texts.of("command.messages.to_mend", problem.remedy()), HANGING);
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
    err.println(Texts.of("command.messages.taperbook_fault_of_program_not"));
    err.println(Texts.of("command.messages.please_report_it_with_these"));
    err.println(
        Texts.of("command.messages.java", BuildInfo.ofThisProgram().name(), Runtime.version()));
    for (Throwable each = fault; each != null; each = each.getCause()) {
      err.println(
          (each == fault ? "" : Texts.of("command.messages.caused_by"))
              + Printable.of(each.toString()));
      for (StackTraceElement element : each.getStackTrace()) {
        err.println(Texts.of("command.messages.at", Printable.of(element.toString())));
      }
    }
  }
}
