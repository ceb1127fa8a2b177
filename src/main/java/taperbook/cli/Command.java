package taperbook.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The commands, with their usages. Help, completion and reference are generated from this list. */
public enum Command {
  REPORT(
      "report",
      "a report was refused; what was published of it is unchanged",
      Set.of(),
      List.of(
          new Usage("", List.of(), "make every report that is out of date"),
          new Usage(
              "", List.of(OperandKind.REPORTS), "make these reports, if they are out of date")),
      List.of(
          new Example("taperbook report", "every report of the folder you are in"),
          new Example("taperbook report finch-first-look", "reports/finch-first-look.md alone"))),
  CHECK(
      "check",
      "an error was found",
      Set.of(),
      List.of(
          new Usage("", List.of(), "read everything, say every problem, write nothing"),
          new Usage(
              "",
              List.of(OperandKind.REPORTS),
              "the same of these reports, with each figure typed by hand")),
      List.of(
          new Example("taperbook check", "sessions, range tests and reports of this folder"),
          new Example("taperbook check finch-first-look", "one report and what it is made from"))),
  EXPLAIN(
      "explain",
      "there is no such report or number, or its input was refused",
      Set.of(),
      List.of(
          new Usage(
              "",
              List.of(OperandKind.REPORT, OperandKind.NUMBER),
              "say how a number of a report came about"),
          new Usage(
              "",
              List.of(OperandKind.REPORT, OperandKind.NUMBER, OperandKind.SESSION_OF_REPORT),
              "the same of a session it is held against, or of one session of a library")),
      List.of(
          new Example(
              "taperbook explain finch-first-look time_to_add_100_km",
              "formula, rows, budget and caveats of one number"),
          new Example(
              "taperbook explain finch-first-look peak_power finch-quarry-lane-first",
              "of a session that is compared"),
          new Example(
              "taperbook explain library peak_power veldt-quarry-lane", "of a row of a library"))),
  VERIFY(
      "verify",
      "not verified, only recomputed, or not a report's PDF",
      EnumSet.of(Option.OUT, Option.LIMIT),
      List.of(
          new Usage(
              "",
              List.of(OperandKind.PDF),
              "recompute a report from what its PDF carries, and compare")),
      List.of(
          new Example(
              "taperbook verify reports/finch-first-look/report.pdf", "needs nothing but the PDF"),
          new Example(
              "taperbook verify reports/finch-first-look/report.pdf --out recomputed.pdf",
              "writes the PDF that follows from the inputs, to look at"))),
  BLANK(
      "blank",
      "nothing was written: a file is there already, or a name cannot be used",
      EnumSet.of(Option.UNITS, Option.PAPER, Option.LEGS),
      List.of(
          new Usage(
              "session", List.of(OperandKind.NEW_NAME), "begin the files of a charging session"),
          new Usage(
              "range-test",
              List.of(OperandKind.NEW_NAME),
              "begin the files of a range test; --legs for its legs as well"),
          new Usage(
              "report",
              List.of(OperandKind.NEW_NAME, OperandKind.SESSION, OperandKind.RANGE_TESTS),
              "begin the text of a report"),
          new Usage(
              "sheet",
              List.of(OperandKind.SHEET_KIND),
              "a recording sheet to print, --paper a4 or letter")),
      List.of(
          new Example("taperbook blank session finch-again", "then fill in sessions/finch-again/"),
          new Example("taperbook blank range-test finch-drive --legs", "the drive, with its legs"),
          new Example(
              "taperbook blank report finch-second-look finch-quarry-lane finch-ring-road",
              "a report on a session and a drive that are there"),
          new Example("taperbook blank sheet --paper letter --units mi", "to print and write on"))),
  WATCH(
      "watch",
      "there is no such folder",
      Set.of(),
      List.of(
          new Usage(
              "", List.of(), "make what is out of date whenever a file is saved, until Ctrl-C"),
          new Usage("", List.of(OperandKind.REPORTS), "the same of these reports")),
      List.of(
          new Example("taperbook watch", "keep it running while you type readings"),
          new Example("taperbook watch finch-first-look", "one report alone"))),
  COMPLETION(
      "completion",
      "",
      Set.of(),
      List.of(
          new Usage(
              "",
              List.of(OperandKind.SHELL),
              "print a script that lets this shell complete commands, names and ids")),
      List.of(
          new Example(
              "taperbook completion bash", "in ~/.bashrc: source <(taperbook completion bash)"),
          new Example(
              "taperbook completion zsh",
              "in ~/.zshrc, after compinit: source <(taperbook completion zsh)"),
          new Example(
              "taperbook completion fish",
              "save it as ~/.config/fish/completions/taperbook.fish"))),
  HELP(
      "help",
      "",
      Set.of(),
      List.of(
          new Usage("", List.of(), "every command in short"),
          new Usage(
              "", List.of(OperandKind.COMMAND), "one command with examples and exit statuses")),
      List.of(new Example("taperbook help explain", "the same as taperbook explain --help")));

  /**
   * A usage of a command.
   *
   * @param word a keyword that selects this usage; may be empty
   * @param slots its operands
   * @param meaning what the command does in this usage
   */
  public record Usage(String word, List<OperandKind> slots, String meaning) {
    public Usage {
      slots = List.copyOf(slots);
    }

    /** Returns the arguments that follow the command's name. */
    public String arguments() {
      List<String> parts = new ArrayList<>();
      if (!word.isEmpty()) {
        parts.add(word);
      }
      slots.forEach(s -> parts.add(s.written()));
      return String.join(" ", parts);
    }
  }

  /**
   * An example that uses the demo's files.
   *
   * @param call the whole command line
   * @param meaning short description of the result
   */
  public record Example(String call, String meaning) {}

  private final String word;
  private final String refused;
  private final Set<Option> options;
  private final List<Usage> usages;
  private final List<Example> examples;

  Command(
      String word,
      String refused,
      Set<Option> options,
      List<Usage> usages,
      List<Example> examples) {
    this.word = word;
    this.refused = refused;
    this.options = Set.copyOf(options);
    this.usages = List.copyOf(usages);
    this.examples = List.copyOf(examples);
  }

  /** Returns the command with this name. */
  public static Optional<Command> ofWord(String word) {
    return Arrays.stream(values()).filter(c -> c.word.equals(word)).findFirst();
  }

  /** Returns the name on the command line. */
  public String word() {
    return word;
  }

  /** Returns true if the command accepts the option; all accept {@code --folder}. */
  boolean takes(Option option) {
    return option == Option.FOLDER || options.contains(option);
  }

  public List<Usage> usages() {
    return usages;
  }

  /** Returns examples that use the demo's files. */
  public List<Example> examples() {
    return examples;
  }

  /** Returns the meaning of exit status 1; empty if the command never ends with 1. */
  String refused() {
    return refused;
  }
}
