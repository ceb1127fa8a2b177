package taperbook.app;

import java.io.PrintStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
    if (arguments.isEmpty() || arguments.contains("--help") || arguments.contains("-h")) {
      out.print(Help.text());
      return arguments.isEmpty() ? ExitStatus.WRONG_USAGE : ExitStatus.DONE;
    }
    if (arguments.contains("--version")) {
      out.println(ProgramStamp.ofThisProgram().name());
      return ExitStatus.DONE;
    }
    Optional<Request> request = understand(arguments);
    return request.isEmpty() ? ExitStatus.WRONG_USAGE : carryOut(request.get());
  }

  private Optional<Request> understand(List<String> arguments) {
    List<String> words = new ArrayList<>();
    Path folder = Path.of("");
    for (int i = 0; i < arguments.size(); i++) {
      String argument = arguments.get(i);
      if (argument.equals("--folder") || argument.startsWith("--folder=")) {
        boolean joined = argument.startsWith("--folder=");
        if (!joined && i + 1 == arguments.size()) {
          return wrong("--folder needs the name of a folder after it");
        }
        String name = joined ? argument.substring("--folder=".length()) : arguments.get(++i);
        try {
          folder = Path.of(name);
        } catch (InvalidPathException e) {
          return wrong("'" + name + "' cannot be the name of a folder");
        }
      } else if (argument.startsWith("-")) {
        return wrong("there is no option " + argument);
      } else {
        words.add(argument);
      }
    }
    if (words.isEmpty()) {
      return wrong("a command is missing");
    }
    return Optional.of(new Request(words.get(0), words.subList(1, words.size()), folder));
  }

  private Optional<Request> wrong(String what) {
    err.println("taperbook: " + what + ".");
    err.println("taperbook --help shows what can be asked.");
    return Optional.empty();
  }

  private ExitStatus carryOut(Request request) {
    Messages messages = new Messages(out, err, surroundings);
    try {
      return switch (request.command()) {
        case "report" -> new ReportCommand(messages, surroundings).run(request);
        case "check" -> new CheckCommand(messages, surroundings).run(request);
        case "explain" -> new ExplainCommand(messages, surroundings).run(request);
        case "verify" -> new VerifyCommand(messages).run(request);
        default -> {
          wrong("there is no command '" + request.command() + "'");
          yield ExitStatus.WRONG_USAGE;
        }
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
    } catch (RuntimeException | StackOverflowError e) {
      messages.ourFault(e);
      return ExitStatus.OUR_FAULT;
    }
  }
}
