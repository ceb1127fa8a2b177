package taperbook.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Help texts: an overview of all commands, or details of one with examples. */
public final class Help {
  private static final int MEANING_AT = 33;
  private static final String MARGIN = "  ";

  private final int width;
  private final List<String> lines = new ArrayList<>();

  private Help(int width) {
    this.width = width;
  }

  /**
   * Returns an overview of all commands.
   *
   * @param width line width, characters
   */
  public static String overview(int width) {
    Help help = new Help(width);
    help.text(
        "", "taperbook: from charging readings and a range test to a report that others can check");
    help.lines.add("");
    for (Command command : Command.values()) {
      help.usages(command);
    }
    help.lines.add("");
    Arrays.stream(Option.values()).forEach(help::option);
    help.heading("Examples");
    for (Command command : List.of(Command.REPORT, Command.EXPLAIN, Command.BLANK)) {
      help.example(command.examples().get(0));
    }
    help.lines.add("");
    help.text(
        "", "A report is a text reports/NAME.md; what is made of it goes into reports/NAME/.");
    help.text(
        "",
        "taperbook help COMMAND shows one command with examples and what its exit status means.");
    help.heading("Exit status");
    Stream.of(ExitStatus.values()).forEach(s -> help.status(s, s.meaning()));
    return help.printed();
  }

  /**
   * Returns the help of one command: usage, examples, options and exit statuses.
   *
   * @param width line width, characters
   */
  public static String of(Command command, int width) {
    Help help = new Help(width);
    help.usages(command);
    help.heading("Examples");
    command.examples().forEach(help::example);
    help.heading("Options");
    Stream.of(Option.values()).filter(command::takes).forEach(help::option);
    help.heading("Exit status");
    for (ExitStatus status : ExitStatus.values()) {
      meaning(command, status).ifPresent(meaning -> help.status(status, meaning));
    }
    return help.printed();
  }

  private static Optional<String> meaning(Command command, ExitStatus status) {
    return status == ExitStatus.INPUT_REFUSED
        ? Optional.of(command.refused()).filter(meaning -> !meaning.isEmpty())
        : Optional.of(status.meaning());
  }

  private void heading(String words) {
    lines.add("");
    lines.add(words + ":");
  }

  private void usages(Command command) {
    for (Command.Usage usage : command.usages()) {
      entry(("taperbook " + command.word() + " " + usage.arguments()).strip(), usage.meaning());
    }
  }

  private void option(Option option) {
    entry(option.usage(), option.meaning());
  }

  private void example(Command.Example example) {
    lines.add(MARGIN + example.call());
    text("      ", example.meaning());
  }

  private void status(ExitStatus status, String meaning) {
    text(MARGIN, status.code() + " " + meaning);
  }

  private void text(String indent, String words) {
    lines.addAll(LineWrapping.lines(indent + words, indent, width));
  }

  private void entry(String call, String meaning) {
    String indent = " ".repeat(MEANING_AT);
    String first = MARGIN + call;
    if (first.length() > MEANING_AT - 2) {
      lines.add(first);
      first = "";
    }
    String start = first + " ".repeat(MEANING_AT - first.length());
    lines.addAll(LineWrapping.lines(start + meaning, indent, width));
  }

  private String printed() {
    return String.join("\n", lines) + "\n";
  }
}
