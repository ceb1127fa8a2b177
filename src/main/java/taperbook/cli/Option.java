package taperbook.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import taperbook.i18n.Texts;
import taperbook.plan.Paper;

/** Options of the command line. */
public enum Option {
  FOLDER("--folder", "DIR", List.of()),
  UNITS("--units", "UNIT", List.of("km", "mi")),
  PAPER("--paper", "SIZE", Paper.words()),
  LEGS("--legs", "", List.of()),
  OUT("--out", "FILE", List.of()),
  LIMIT("--limit", "SECONDS", List.of()),
  VERSION("--version", "", List.of()),
  HELP("--help", "", List.of());

  private final String written;
  private final String value;
  private final List<String> choices;

  Option(String written, String value, List<String> choices) {
    this.written = written;
    this.value = value;
    this.choices = choices;
  }

  /** Returns the option that an argument names, with or without a value after an equals sign. */
  static Optional<Option> of(String argument) {
    return Arrays.stream(values())
        .filter(
            o ->
                argument.equals(o.written)
                    || (!o.value.isEmpty() && argument.startsWith(o.written + "=")))
        .findFirst();
  }

  /** Returns the form on the command line. */
  String written() {
    return written;
  }

  /** Returns true if the option takes a value. */
  boolean takesValue() {
    return !value.isEmpty();
  }

  /** Returns the permitted values; empty if there is no such list. */
  List<String> choices() {
    return choices;
  }

  /** Returns true if the value is a path. */
  boolean takesPath() {
    return value.equals("DIR") || value.equals("FILE");
  }

  /** Returns true if a value is permitted. */
  boolean accepts(String given) {
    if (value.equals("SECONDS")) {
      return given.matches("[1-9][0-9]{0,4}");
    }
    return choices.isEmpty() || choices.contains(given);
  }

  /** Returns a description of the permitted values. */
  String need() {
    return switch (value) {
      case "DIR" -> Texts.of("command.option.name_of_folder");
      case "FILE" -> Texts.of("command.option.name_of_file");
      case "SECONDS" -> Texts.of("command.option.whole_number_of_seconds_from");
      default -> Texts.of("command.option.one_of_words", String.join(", ", choices));
    };
  }

  /** Returns the option with its value, such as {@code --units km|mi}. */
  public String usage() {
    String behind = choices.isEmpty() ? value : String.join("|", choices);
    return behind.isEmpty() ? written : written + " " + behind;
  }

  /** Returns the description of the option. */
  public String meaning() {
    return Texts.ofConstant("option", this, "meaning");
  }
}
