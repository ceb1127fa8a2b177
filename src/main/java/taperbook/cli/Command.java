package taperbook.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import taperbook.i18n.Texts;

/** The commands, with their usages. Help, completion and reference are generated from this list. */
public enum Command {
  REPORT(
      "command.command.report_was_refused_what_was",
      Set.of(),
      List.of(
          new Usage("", "command.command.make_every_report_that_is"),
          new Usage("", "command.command.make_these_reports_if_they", OperandKind.REPORTS)),
      List.of(
          new Example("taperbook report", "command.command.every_report_of_folder_you"),
          new Example(
              "taperbook report finch-first-look", "command.command.reports_finch_first_look_md"))),
  CHECK(
      "command.command.error_was_found",
      Set.of(),
      List.of(
          new Usage("", "command.command.read_everything_say_every_problem"),
          new Usage("", "command.command.same_of_these_reports_with", OperandKind.REPORTS)),
      List.of(
          new Example("taperbook check", "command.command.sessions_range_tests_and_reports"),
          new Example(
              "taperbook check finch-first-look", "command.command.one_report_and_what_it"))),
  EXPLAIN(
      "command.command.there_is_no_such_report",
      Set.of(),
      List.of(
          new Usage(
              "",
              "command.command.say_how_number_of_report",
              OperandKind.REPORT,
              OperandKind.NUMBER),
          new Usage(
              "",
              "command.command.same_of_session_it_is",
              OperandKind.REPORT,
              OperandKind.NUMBER,
              OperandKind.SESSION_OF_REPORT)),
      List.of(
          new Example(
              "taperbook explain finch-first-look time_to_add_100_km",
              "command.command.formula_rows_budget_and_caveats"),
          new Example(
              "taperbook explain finch-first-look peak_power finch-quarry-lane-first",
              "command.command.of_session_that_is_compared"),
          new Example(
              "taperbook explain library peak_power veldt-quarry-lane",
              "command.command.of_row_of_library"))),
  VERIFY(
      "command.command.not_verified_only_recomputed_or",
      Set.of(Option.OUT, Option.LIMIT),
      List.of(new Usage("", "command.command.recompute_report_from_what_its", OperandKind.PDF)),
      List.of(
          new Example(
              "taperbook verify reports/finch-first-look/report.pdf",
              "command.command.needs_nothing_but_pdf"),
          new Example(
              "taperbook verify reports/finch-first-look/report.pdf --out recomputed.pdf",
              "command.command.writes_pdf_that_follows_from"))),
  BLANK(
      "command.command.nothing_was_written_file_is",
      Set.of(Option.UNITS, Option.PAPER, Option.LEGS),
      List.of(
          new Usage(
              "session", "command.command.begin_files_of_charging_session", OperandKind.NEW_NAME),
          new Usage(
              "range-test", "command.command.begin_files_of_range_test", OperandKind.NEW_NAME),
          new Usage(
              "report",
              "command.command.begin_text_of_report",
              OperandKind.NEW_NAME,
              OperandKind.SESSION,
              OperandKind.RANGE_TESTS),
          new Usage(
              "sheet", "command.command.recording_sheet_to_print_paper", OperandKind.SHEET_KIND)),
      List.of(
          new Example(
              "taperbook blank session finch-again", "command.command.then_fill_in_sessions_finch"),
          new Example(
              "taperbook blank range-test finch-drive --legs",
              "command.command.drive_with_its_legs"),
          new Example(
              "taperbook blank report finch-second-look finch-quarry-lane finch-ring-road",
              "command.command.report_on_session_and_drive"),
          new Example(
              "taperbook blank sheet --paper letter --units mi",
              "command.command.to_print_and_write_on"))),
  WATCH(
      "command.command.there_is_no_such_folder",
      Set.of(),
      List.of(
          new Usage("", "command.command.make_what_is_out_of"),
          new Usage("", "command.command.same_of_these_reports", OperandKind.REPORTS)),
      List.of(
          new Example("taperbook watch", "command.command.keep_it_running_while_you"),
          new Example("taperbook watch finch-first-look", "command.command.one_report_alone"))),
  COMPLETION(
      "",
      Set.of(),
      List.of(new Usage("", "command.command.print_script_that_lets_this", OperandKind.SHELL)),
      List.of(
          new Example(
              "taperbook completion bash", "command.command.in_bashrc_source_taperbook_completion"),
          new Example("taperbook completion zsh", "command.command.in_zshrc_after_compinit_source"),
          new Example("taperbook completion fish", "command.command.save_it_as_config_fish"))),
  HELP(
      "",
      Set.of(),
      List.of(
          new Usage("", "command.command.every_command_in_short"),
          new Usage("", "command.command.one_command_with_examples_and", OperandKind.COMMAND)),
      List.of(
          new Example("taperbook help explain", "command.command.same_as_taperbook_explain_help")));

  /**
   * A usage of a command.
   *
   * @param word a keyword that selects this usage; may be empty
   * @param key key of the text on what the command does in this usage
   * @param slots its operands
   */
  public record Usage(String word, String key, List<OperandKind> slots) {
    public Usage {
      slots = List.copyOf(slots);
    }

    private Usage(String word, String key, OperandKind... slots) {
      this(word, key, List.of(slots));
    }

    /** Returns what the command does in this usage. */
    public String meaning() {
      return Texts.of(key);
    }

    /** Returns the arguments that follow the command's name. */
    public String arguments() {
      return Stream.concat(Stream.of(word), slots.stream().map(OperandKind::written))
          .filter(part -> !part.isEmpty())
          .collect(Collectors.joining(" "));
    }
  }

  /**
   * An example that uses the demo's files.
   *
   * @param call the whole command line
   * @param key key of the text that describes the result
   */
  public record Example(String call, String key) {
    /** Returns a short description of the result. */
    public String meaning() {
      return Texts.of(key);
    }
  }

  private final String refused;
  private final Set<Option> options;
  private final List<Usage> usages;
  private final List<Example> examples;

  Command(String refused, Set<Option> options, List<Usage> usages, List<Example> examples) {
    this.refused = refused;
    this.options = options;
    this.usages = usages;
    this.examples = examples;
  }

  /** Returns the command with this name. */
  public static Optional<Command> ofWord(String word) {
    return Arrays.stream(values()).filter(c -> c.word().equals(word)).findFirst();
  }

  /** Returns the name on the command line. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
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
  Optional<String> refused() {
    return refused.isEmpty() ? Optional.empty() : Optional.of(Texts.of(refused));
  }
}
