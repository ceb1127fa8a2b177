package taperbook.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import taperbook.i18n.Texts;

/** The commands, with their usages. Help, completion and reference are generated from this list. */
public enum Command {
  REPORT(
      "report",
      Texts.of("command.command.report_was_refused_what_was"),
      Set.of(),
      List.of(
          new Usage("", List.of(), Texts.of("command.command.make_every_report_that_is")),
          new Usage(
              "",
              List.of(OperandKind.REPORTS),
              Texts.of("command.command.make_these_reports_if_they"))),
      List.of(
          new Example("taperbook report", Texts.of("command.command.every_report_of_folder_you")),
          new Example(
              "taperbook report finch-first-look",
              Texts.of("command.command.reports_finch_first_look_md")))),
  CHECK(
      "check",
      Texts.of("command.command.error_was_found"),
      Set.of(),
      List.of(
          new Usage("", List.of(), Texts.of("command.command.read_everything_say_every_problem")),
          new Usage(
              "",
              List.of(OperandKind.REPORTS),
              Texts.of("command.command.same_of_these_reports_with"))),
      List.of(
          new Example(
              "taperbook check", Texts.of("command.command.sessions_range_tests_and_reports")),
          new Example(
              "taperbook check finch-first-look",
              Texts.of("command.command.one_report_and_what_it")))),
  EXPLAIN(
      "explain",
      Texts.of("command.command.there_is_no_such_report"),
      Set.of(),
      List.of(
          new Usage(
              "",
              List.of(OperandKind.REPORT, OperandKind.NUMBER),
              Texts.of("command.command.say_how_number_of_report")),
          new Usage(
              "",
              List.of(OperandKind.REPORT, OperandKind.NUMBER, OperandKind.SESSION_OF_REPORT),
              Texts.of("command.command.same_of_session_it_is"))),
      List.of(
          new Example(
              "taperbook explain finch-first-look time_to_add_100_km",
              Texts.of("command.command.formula_rows_budget_and_caveats")),
          new Example(
              "taperbook explain finch-first-look peak_power finch-quarry-lane-first",
              Texts.of("command.command.of_session_that_is_compared")),
          new Example(
              "taperbook explain library peak_power veldt-quarry-lane",
              Texts.of("command.command.of_row_of_library")))),
  VERIFY(
      "verify",
      Texts.of("command.command.not_verified_only_recomputed_or"),
      EnumSet.of(Option.OUT, Option.LIMIT),
      List.of(
          new Usage(
              "",
              List.of(OperandKind.PDF),
              Texts.of("command.command.recompute_report_from_what_its"))),
      List.of(
          new Example(
              "taperbook verify reports/finch-first-look/report.pdf",
              Texts.of("command.command.needs_nothing_but_pdf")),
          new Example(
              "taperbook verify reports/finch-first-look/report.pdf --out recomputed.pdf",
              Texts.of("command.command.writes_pdf_that_follows_from")))),
  BLANK(
      "blank",
      Texts.of("command.command.nothing_was_written_file_is"),
      EnumSet.of(Option.UNITS, Option.PAPER, Option.LEGS),
      List.of(
          new Usage(
              "session",
              List.of(OperandKind.NEW_NAME),
              Texts.of("command.command.begin_files_of_charging_session")),
          new Usage(
              "range-test",
              List.of(OperandKind.NEW_NAME),
              Texts.of("command.command.begin_files_of_range_test")),
          new Usage(
              "report",
              List.of(OperandKind.NEW_NAME, OperandKind.SESSION, OperandKind.RANGE_TESTS),
              Texts.of("command.command.begin_text_of_report")),
          new Usage(
              "sheet",
              List.of(OperandKind.SHEET_KIND),
              Texts.of("command.command.recording_sheet_to_print_paper"))),
      List.of(
          new Example(
              "taperbook blank session finch-again",
              Texts.of("command.command.then_fill_in_sessions_finch")),
          new Example(
              "taperbook blank range-test finch-drive --legs",
              Texts.of("command.command.drive_with_its_legs")),
          new Example(
              "taperbook blank report finch-second-look finch-quarry-lane finch-ring-road",
              Texts.of("command.command.report_on_session_and_drive")),
          new Example(
              "taperbook blank sheet --paper letter --units mi",
              Texts.of("command.command.to_print_and_write_on")))),
  WATCH(
      "watch",
      Texts.of("command.command.there_is_no_such_folder"),
      Set.of(),
      List.of(
          new Usage("", List.of(), Texts.of("command.command.make_what_is_out_of")),
          new Usage(
              "", List.of(OperandKind.REPORTS), Texts.of("command.command.same_of_these_reports"))),
      List.of(
          new Example("taperbook watch", Texts.of("command.command.keep_it_running_while_you")),
          new Example(
              "taperbook watch finch-first-look", Texts.of("command.command.one_report_alone")))),
  COMPLETION(
      "completion",
      "",
      Set.of(),
      List.of(
          new Usage(
              "",
              List.of(OperandKind.SHELL),
              Texts.of("command.command.print_script_that_lets_this"))),
      List.of(
          new Example(
              "taperbook completion bash",
              Texts.of("command.command.in_bashrc_source_taperbook_completion")),
          new Example(
              "taperbook completion zsh",
              Texts.of("command.command.in_zshrc_after_compinit_source")),
          new Example(
              "taperbook completion fish", Texts.of("command.command.save_it_as_config_fish")))),
  HELP(
      "help",
      "",
      Set.of(),
      List.of(
          new Usage("", List.of(), Texts.of("command.command.every_command_in_short")),
          new Usage(
              "",
              List.of(OperandKind.COMMAND),
              Texts.of("command.command.one_command_with_examples_and"))),
      List.of(
          new Example(
              "taperbook help explain",
              Texts.of("command.command.same_as_taperbook_explain_help"))));

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
