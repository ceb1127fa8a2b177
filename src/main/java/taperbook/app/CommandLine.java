package taperbook.app;

import java.io.PrintStream;
import java.nio.file.InvalidPathException;
import java.util.List;
import java.util.Optional;
import taperbook.app.command.BlankCommand;
import taperbook.app.command.CheckCommand;
import taperbook.app.command.ExplainCommand;
import taperbook.app.command.ReportCommand;
import taperbook.app.command.VerifyCommand;
import taperbook.app.command.WatchCommand;
import taperbook.app.line.Arguments;
import taperbook.app.line.Command;
import taperbook.app.line.Completion;
import taperbook.app.line.Help;
import taperbook.app.line.Request;
import taperbook.app.line.Slot;
import taperbook.app.process.ExitStatus;
import taperbook.app.process.Messages;
import taperbook.app.process.Surroundings;
import taperbook.app.project.StoppedException;
import taperbook.app.stamp.ProgramStamp;

/** Understands the arguments, runs the command, and turns what goes wrong into an exit status. */
public final class CommandLine {
  private static final long MEBIBYTE = 1L << 20;

  private final PrintStream out;
  private final PrintStream err;
  private final Surroundings surroundings;

  /**
   * A command line.
   *
   * @param out where results go
   * @param err where progress and problems go
   * @param surroundings what the process tells
   */
  public CommandLine(PrintStream out, PrintStream err, Surroundings surroundings) {
    this.out = out;
    this.err = err;
    this.surroundings = surroundings;
  }

  /** Runs the command that the arguments ask for. */
  public ExitStatus run(List<String> arguments) {
    Messages messages = new Messages(out, err, surroundings);
    if (arguments.isEmpty()) {
      messages.text(Help.overview(messages.width()));
      return ExitStatus.WRONG_USAGE;
    }
    if (arguments.contains("--help") || arguments.contains("-h")) {
      messages.text(
          arguments.stream()
              .flatMap(word -> Command.ofWord(word).stream())
              .findFirst()
              .map(command -> Help.of(command, messages.width()))
              .orElseGet(() -> Help.overview(messages.width())));
      return ExitStatus.DONE;
    }
    if (arguments.contains("--version")) {
      messages.result(ProgramStamp.ofThisProgram().name());
      return ExitStatus.DONE;
    }
    try {
      return carryOut(Arguments.understand(arguments), messages);
    } catch (Arguments.WrongUsage e) {
      String what = e.getMessage();
      messages.stopped(what + (what.endsWith("?") ? "" : "."));
      messages.remark("taperbook --help shows what can be asked.");
      return ExitStatus.WRONG_USAGE;
    } finally {
      messages.endProgress();
    }
  }

  private ExitStatus carryOut(Request request, Messages messages) throws Arguments.WrongUsage {
    try {
      return switch (request.command()) {
        case REPORT -> new ReportCommand(messages, surroundings).run(request);
        case CHECK -> new CheckCommand(messages, surroundings).run(request);
        case EXPLAIN -> new ExplainCommand(messages, surroundings).run(request);
        case VERIFY -> new VerifyCommand(messages).run(request);
        case BLANK -> new BlankCommand(messages, surroundings).run(request);
        case WATCH -> new WatchCommand(messages, surroundings).run(request);
        case COMPLETION -> completion(request, messages);
        case HELP -> help(request, messages);
      };
    } catch (StoppedException e) {
      messages.stopped(e.getMessage());
      return ExitStatus.INPUT_REFUSED;
    } catch (OutOfMemoryError e) {
      messages.stopped(
          "the input needs more memory than the "
              + Runtime.getRuntime().maxMemory() / MEBIBYTE
              + " MiB there are. What is published is unchanged. Keep the rows of one session in a"
              + " file, or give Java more memory with JAVA_TOOL_OPTIONS=-Xmx8g, then run again.");
      return ExitStatus.INPUT_REFUSED;
    } catch (InvalidPathException e) {
      messages.stopped(
          "the name '"
              + e.getInput()
              + "' cannot be used in this locale, which is not UTF-8. Set LC_ALL=C.UTF-8, then run"
              + " again.");
      return ExitStatus.INPUT_REFUSED;
    } catch (RuntimeException | StackOverflowError | LinkageError e) {
      Optional<String> stopped = TemporaryFolder.reasonOf(e);
      if (stopped.isPresent()) {
        messages.stopped(stopped.get());
        return ExitStatus.INPUT_REFUSED;
      }
      messages.ourFault(e);
      return ExitStatus.OUR_FAULT;
    }
  }

  private static ExitStatus completion(Request request, Messages messages) {
    List<String> names = request.names();
    if (names.size() != 1 || !Slot.SHELL.words().contains(names.get(0))) {
      messages.stopped(
          "completion needs one of the words " + String.join(", ", Slot.SHELL.words()) + ".");
      return ExitStatus.WRONG_USAGE;
    }
    messages.text(Completion.script(names.get(0)));
    return ExitStatus.DONE;
  }

  private static ExitStatus help(Request request, Messages messages) throws Arguments.WrongUsage {
    if (request.names().isEmpty()) {
      messages.text(Help.overview(messages.width()));
    } else {
      Command command = Arguments.command(request.names().get(0));
      messages.text(Help.of(command, messages.width()));
    }
    return ExitStatus.DONE;
  }
}
