package taperbook.app;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A command, with every way to call it. */
enum Command {
  REPORT(
      "report",
      Set.of(),
      new Usage("", "make every report that is out of date"),
      new Usage("NAME ...", "make these reports, if they are out of date")),
  CHECK(
      "check",
      Set.of(),
      new Usage("", "read everything, say every problem, write nothing"),
      new Usage("NAME ...", "the same of these reports, with each figure typed by hand")),
  EXPLAIN(
      "explain",
      Set.of(),
      new Usage("NAME ID", "say how a number of a report came about"),
      new Usage(
          "NAME ID SESSION",
          "the same of a session it is held against, or of one session of a library")),
  VERIFY(
      "verify",
      Set.of(),
      new Usage("FILE.pdf", "recompute a report from what its PDF carries, and compare")),
  BLANK(
      "blank",
      EnumSet.of(Option.UNITS, Option.PAPER, Option.LEGS),
      new Usage("session NAME", "begin the files of a charging session"),
      new Usage("range-test NAME", "begin the files of a range test; --legs for its legs as well"),
      new Usage("report NAME SESSION [RANGE-TEST ...]", "begin the text of a report"),
      new Usage("sheet [range-test]", "a recording sheet to print, --paper a4 or letter")),
  WATCH(
      "watch",
      Set.of(),
      new Usage("", "make what is out of date whenever a file is saved, until Ctrl-C"),
      new Usage("NAME ...", "the same of these reports"));

  /**
   * A way to call a command.
   *
   * @param arguments what goes behind its word
   * @param meaning what it does then
   */
  record Usage(String arguments, String meaning) {}

  private final String word;
  private final Set<Option> options;
  private final List<Usage> usages;

  Command(String word, Set<Option> options, Usage... usages) {
    this.word = word;
    this.options = Set.copyOf(options);
    this.usages = List.of(usages);
  }

  /** The command with this word. */
  static Optional<Command> ofWord(String word) {
    return Arrays.stream(values()).filter(c -> c.word.equals(word)).findFirst();
  }

  /** The word on the command line. */
  String word() {
    return word;
  }

  /** True if the command takes the option; all take {@code --folder}. */
  boolean takes(Option option) {
    return option == Option.FOLDER || options.contains(option);
  }

  /** Every way to call it. */
  List<Usage> usages() {
    return usages;
  }
}
