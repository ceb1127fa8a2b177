package taperbook;

import java.io.PrintStream;
import java.nio.file.InvalidPathException;
import java.util.List;
import java.util.Optional;
import taperbook.buildinfo.BuildInfo;
import taperbook.cli.ArgumentParser;
import taperbook.cli.Command;
import taperbook.cli.Completion;
import taperbook.cli.ExitStatus;
import taperbook.cli.Help;
import taperbook.cli.Messages;
import taperbook.cli.OperandKind;
import taperbook.cli.ProcessContext;
import taperbook.cli.Request;
import taperbook.command.BlankCommand;
import taperbook.command.CheckCommand;
import taperbook.command.ExplainCommand;
import taperbook.command.ReportCommand;
import taperbook.command.VerifyCommand;
import taperbook.command.WatchCommand;
import taperbook.workspace.StoppedException;

/** Parses the arguments, runs the command, and converts failures to an exit status. */
public final class CommandLine {
  private static final long MEBIBYTE = 1L << 20;

  private final PrintStream out;
  private final PrintStream err;
  private final ProcessContext processContext;

  /**
   * Creates a command line.
   *
   * @param out stream for results
   * @param err stream for progress and problems
   * @param processContext the process environment
   */
  public CommandLine(PrintStream out, PrintStream err, ProcessContext processContext) {
    this.out = out;
    this.err = err;
    this.processContext = processContext;
  }

  /** Runs the requested command. */
  public ExitStatus run(List<String> arguments) {
    Messages messages = new Messages(out, err, processContext);
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
      messages.result(BuildInfo.ofThisProgram().name());
      return ExitStatus.DONE;
    }
    try {
      return execute(ArgumentParser.parse(arguments), messages);
    } catch (ArgumentParser.WrongUsage e) {
      String what = e.getMessage();
      messages.stopped(what + (what.endsWith("?") ? "" : "."));
      messages.remark("taperbook --help shows what can be asked.");
      return ExitStatus.WRONG_USAGE;
    } finally {
      messages.endProgress();
    }
  }

  private ExitStatus execute(Request request, Messages messages) throws ArgumentParser.WrongUsage {
    try {
      return switch (request.command()) {
        case REPORT -> new ReportCommand(messages, processContext).run(request);
        case CHECK -> new CheckCommand(messages, processContext).run(request);
        case EXPLAIN -> new ExplainCommand(messages, processContext).run(request);
        case VERIFY -> new VerifyCommand(messages).run(request);
        case BLANK -> new BlankCommand(messages, processContext).run(request);
        case WATCH -> new WatchCommand(messages, processContext).run(request);
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
      messages.programFailed(e);
      return ExitStatus.OUR_FAULT;
    }
  }

  private static ExitStatus completion(Request request, Messages messages) {
    List<String> names = request.names();
    if (names.size() != 1 || !OperandKind.SHELL.words().contains(names.get(0))) {
      messages.stopped(
          "completion needs one of the words "
              + String.join(", ", OperandKind.SHELL.words())
              + ".");
      return ExitStatus.WRONG_USAGE;
    }
    messages.text(Completion.script(names.get(0)));
    return ExitStatus.DONE;
  }

  private static ExitStatus help(Request request, Messages messages)
      throws ArgumentParser.WrongUsage {
    if (request.names().isEmpty()) {
      messages.text(Help.overview(messages.width()));
    } else {
      Command command = ArgumentParser.command(request.names().get(0));
      messages.text(Help.of(command, messages.width()));
    }
    return ExitStatus.DONE;
  }
}
