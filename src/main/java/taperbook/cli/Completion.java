package taperbook.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Generates shell completion scripts from the lists of commands and options. A script reads the
 * project folder by itself, because the shell waits for it at each keystroke.
 *
 * <p>A position on the line is written as {@code command/first word/preceding words}; the first
 * script line whose pattern matches it determines the completions.
 */
public final class Completion {
  private final boolean fish;

  private Completion(boolean fish) {
    this.fish = fish;
  }

  /**
   * Returns the script.
   *
   * @param shell one of the words of {@link OperandKind#SHELL}
   */
  public static String script(String shell) {
    Completion completion = new Completion(shell.equals("fish"));
    String text = resource("completion." + shell);
    if (!completion.fish) {
      text = text.replace("@CANDIDATES@\n", resource("completion.sh"));
    }
    return text.replace("@PLACES@\n", completion.places())
        .replace("@OPTIONS@\n", completion.options())
        .replace("@VALUES@\n", completion.values())
        .replace(
            "@VALUED@",
            valued().map(Option::written).collect(Collectors.joining(separator(completion.fish))))
        .replace("@COMMANDS@", words(OperandKind.COMMAND.words()))
        .replace("@DESCRIBED@\n", completion.described());
  }

  private static String separator(boolean fish) {
    return fish ? " " : " | ";
  }

  private static String words(List<String> words) {
    return String.join(" ", words);
  }

  private static Stream<Option> valued() {
    return Arrays.stream(Option.values()).filter(Option::takesValue);
  }

  private static String resource(String name) {
    try (InputStream in = Completion.class.getResourceAsStream("/taperbook/completion/" + name)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(name, e);
    }
  }

  /** Returns a line for each position on the command line that has completions. */
  private String places() {
    Map<String, String> byPattern = new LinkedHashMap<>();
    for (Command command : Command.values()) {
      List<String> first =
          command.usages().stream().map(Command.Usage::word).filter(w -> !w.isEmpty()).toList();
      if (!first.isEmpty()) {
        byPattern.put(command.word() + "//0", print(first));
      }
      for (Command.Usage usage : command.usages()) {
        places(command, usage, byPattern);
      }
    }
    return lines(byPattern);
  }

  private void places(Command command, Command.Usage usage, Map<String, String> byPattern) {
    int before = usage.word().isEmpty() ? 0 : 1;
    String start = command.word() + "/" + (usage.word().isEmpty() ? "*" : usage.word()) + "/";
    for (OperandKind slot : usage.slots()) {
      byPattern.putIfAbsent(start + (slot.repeats() ? "*" : before), action(slot));
      before++;
    }
  }

  private static String action(OperandKind slot) {
    if (slot == OperandKind.NEW_NAME) {
      return "true";
    }
    return slot.words().isEmpty()
        ? "__taperbook_" + slot.scriptName() + " \"$folder\" \"$first\""
        : print(slot.words());
  }

  private static String print(List<String> words) {
    return "printf '%s\\n' " + words(words);
  }

  /** Returns a line with the options of each command. */
  private String options() {
    Map<String, String> byPattern = new LinkedHashMap<>();
    for (Command command : Command.values()) {
      byPattern.put(
          command.word(),
          print(
              Stream.concat(
                      Arrays.stream(Option.values()).filter(command::takes), Stream.of(Option.HELP))
                  .map(Option::written)
                  .toList()));
    }
    byPattern.put("*", print(Arrays.stream(Option.values()).map(Option::written).toList()));
    return lines(byPattern);
  }

  /** Returns a line with the values of each option that takes one. */
  private String values() {
    Map<String, String> byPattern = new LinkedHashMap<>();
    valued()
        .forEach(
            o -> byPattern.put(o.written(), o.takesPath() ? "echo @folders@" : print(o.choices())));
    return lines(byPattern);
  }

  private String lines(Map<String, String> byPattern) {
    StringJoiner lines = new StringJoiner("");
    byPattern.forEach(
        (pattern, action) ->
            lines.add(
                fish
                    ? "        case '" + pattern + "'\n            " + action + "\n"
                    : "    " + pattern + ") " + action + " ;;\n"));
    return lines.toString();
  }

  /** Returns each command and option with its description, for shells that display them. */
  private String described() {
    StringJoiner lines = new StringJoiner("");
    for (Command command : Command.values()) {
      lines.add(
          "complete -c taperbook -n '__taperbook_begins' -f -a "
              + command.word()
              + " -d '"
              + command.usages().get(0).meaning()
              + "'\n");
    }
    for (Option option : Option.values()) {
      lines.add(
          "complete -c taperbook -n '__taperbook_takes "
              + option.written()
              + "' -l "
              + option.written().substring(2)
              + value(option)
              + " -d '"
              + option.meaning()
              + "'\n");
    }
    return lines.toString();
  }

  private static String value(Option option) {
    if (!option.takesValue()) {
      return "";
    }
    return option.takesPath()
        ? " -x -a '(__fish_complete_directories)'"
        : " -x -a '" + words(option.choices()) + "'";
  }
}
