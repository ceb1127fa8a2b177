package taperbook.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import taperbook.i18n.Texts;

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
    help.text("", Texts.of("command.help.taperbook_from_charging_readings_and"));
    help.lines.add("");
    for (Command command : Command.values()) {
      help.usages(command);
    }
    help.lines.add("");
    Arrays.stream(Option.values()).forEach(help::option);
    help.heading(Texts.of("command.help.examples"));
    for (Command command : List.of(Command.REPORT, Command.EXPLAIN, Command.BLANK)) {
      help.example(command.examples().get(0));
    }
    help.lines.add("");
    help.text("", Texts.of("command.help.report_is_text_reports_name"));
    help.text("", Texts.of("command.help.taperbook_help_command_shows_one"));
    help.heading(Texts.of("command.help.exit_status"));
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
    help.heading(Texts.of("command.help.examples"));
    command.examples().forEach(help::example);
    help.heading(Texts.of("command.help.options"));
    Stream.of(Option.values()).filter(command::takes).forEach(help::option);
    help.heading(Texts.of("command.help.exit_status"));
    for (ExitStatus status : ExitStatus.values()) {
      (status == ExitStatus.INPUT_REFUSED ? command.refused() : Optional.of(status.meaning()))
          .ifPresent(meaning -> help.status(status, meaning));
    }
    return help.printed();
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
