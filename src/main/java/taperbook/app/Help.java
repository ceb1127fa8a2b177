package taperbook.app;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** What {@code taperbook --help} prints: the commands, options and exit statuses there are. */
final class Help {
  private static final int MEANING_AT = 33;
  private static final int WIDTH = 100;

  private Help() {}

  static String text() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "taperbook: from charging readings and a range test to a report that others can check");
    lines.add("");
    for (Command command : Command.values()) {
      for (Command.Usage usage : command.usages()) {
        String call = ("taperbook " + command.word() + " " + usage.arguments()).strip();
        entry(call, usage.meaning(), lines);
      }
    }
    lines.add("");
    for (Option option : Option.values()) {
      entry(option.usage(), option.meaning(), lines);
    }
    lines.add("");
    lines.add("A report is a text reports/NAME.md; what is made of it goes into reports/NAME/.");
    lines.add("Exit status: " + exitStatuses() + ".");
    return String.join("\n", lines) + "\n";
  }

  private static String exitStatuses() {
    return Arrays.stream(ExitStatus.values())
        .map(s -> s.code() + " " + s.meaning())
        .collect(Collectors.joining(",\n  "));
  }

  private static void entry(String call, String meaning, List<String> lines) {
    StringBuilder line = new StringBuilder("  " + call);
    if (line.length() > MEANING_AT - 2) {
      lines.add(line.toString());
      line = new StringBuilder();
    }
    line.append(" ".repeat(MEANING_AT - line.length()));
    for (String word : meaning.split(" ", -1)) {
      if (line.length() + word.length() > WIDTH) {
        lines.add(line.toString().stripTrailing());
        line = new StringBuilder(" ".repeat(MEANING_AT));
      }
      line.append(word).append(' ');
    }
    lines.add(line.toString().stripTrailing());
  }
}
