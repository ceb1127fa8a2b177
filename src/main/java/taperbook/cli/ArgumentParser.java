package taperbook.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import taperbook.diagnostics.EditDistance;

/** Parses the arguments of the process into a {@link Request}. */
public final class ArgumentParser {
  private static final int MAX_EDITS = 2;

  private final List<String> words = new ArrayList<>();
  private final Map<Option, String> options = new EnumMap<>(Option.class);

  private ArgumentParser() {}

  /** Parses the arguments. */
  public static Request parse(List<String> arguments) throws WrongUsage {
    ArgumentParser understood = new ArgumentParser();
    understood.read(arguments);
    return understood.request();
  }

  /** The command line is invalid. */
  public static final class WrongUsage extends Exception {
    private static final long serialVersionUID = 1;

    WrongUsage(String what) {
      super(what);
    }

    @Override
    public String getMessage() {
      return String.valueOf(super.getMessage());
    }
  }

  private void read(List<String> arguments) throws WrongUsage {
    for (int i = 0; i < arguments.size(); i++) {
      String argument = arguments.get(i);
      if (!argument.startsWith("-")) {
        words.add(argument);
        continue;
      }
      Option option = Option.of(argument).orElseThrow(() -> noOption(argument));
      String value = "";
      if (option.takesValue()) {
        boolean joined = argument.length() > option.written().length();
        if (!joined && i + 1 == arguments.size()) {
          throw new WrongUsage(option.written() + " needs " + option.need() + " after it");
        }
        value = joined ? argument.substring(option.written().length() + 1) : arguments.get(++i);
      }
      take(option, value);
    }
  }

  private void take(Option option, String value) throws WrongUsage {
    if (options.containsKey(option)) {
      throw new WrongUsage(option.written() + " is given twice");
    }
    if (option.takesValue() && (value.isEmpty() || !option.accepts(value))) {
      throw new WrongUsage(option.written() + " needs " + option.need() + ", not '" + value + "'");
    }
    options.put(option, value);
  }

  private Request request() throws WrongUsage {
    if (words.isEmpty()) {
      throw new WrongUsage("a command is missing");
    }
    Command command = command(words.get(0));
    for (Option option : options.keySet()) {
      if (!command.takes(option)) {
        throw new WrongUsage(command.word() + " takes no option " + option.written());
      }
    }
    String folder = options.getOrDefault(Option.FOLDER, "");
    Map<Option, String> others = new EnumMap<>(options);
    others.remove(Option.FOLDER);
    return new Request(command, words.subList(1, words.size()), path(folder), others);
  }

  /** Returns the command with a name. */
  public static Command command(String word) throws WrongUsage {
    List<String> known = Arrays.stream(Command.values()).map(Command::word).toList();
    return Command.ofWord(word)
        .orElseThrow(
            () -> new WrongUsage("there is no command '" + word + "'" + suggestion(word, known)));
  }

  private static WrongUsage noOption(String argument) {
    List<String> known = Arrays.stream(Option.values()).map(Option::written).toList();
    return new WrongUsage(
        "there is no option " + argument + suggestion(argument.replaceFirst("=.*", ""), known));
  }

  private static String suggestion(String word, List<String> known) {
    Optional<String> near =
        known.stream()
            .filter(w -> word.length() < 20 && EditDistance.between(w, word) <= MAX_EDITS)
            .findFirst();
    return near.map(w -> "; did you mean " + w + "?").orElse("");
  }

  private static Path path(String name) throws WrongUsage {
    try {
      return Path.of(name);
    } catch (InvalidPathException e) {
      throw new WrongUsage("'" + name + "' cannot be the name of a folder");
    }
  }
}
