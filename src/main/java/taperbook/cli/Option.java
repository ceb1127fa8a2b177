package taperbook.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import taperbook.plan.Paper;

/** Options of the command line. */
public enum Option {
  FOLDER(
      "--folder",
      "DIR",
      List.of(),
      "the folder that holds sessions/ and reports/ (default: this one)"),
  UNITS(
      "--units",
      "UNIT",
      List.of("km", "mi"),
      "units of start files and sheets (default: km; for a report, those of its drive)"),
  PAPER("--paper", "SIZE", Paper.words(), "paper of a recording sheet (default: a4)"),
  LEGS("--legs", "", List.of(), "a file for the legs of the drive as well"),
  OUT("--out", "FILE", List.of(), "where the recomputed PDF goes; no file is overwritten"),
  LIMIT(
      "--limit",
      "SECONDS",
      List.of(),
      "time after which verify stops (default: 120); its memory ends at 1 GiB"),
  VERSION("--version", "", List.of(), "name and version"),
  HELP("--help", "", List.of(), "this text, or that of the command it stands with");

  private final String written;
  private final String value;
  private final List<String> choices;
  private final String meaning;

  Option(String written, String value, List<String> choices, String meaning) {
    this.written = written;
    this.value = value;
    this.choices = choices;
    this.meaning = meaning;
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
      case "DIR" -> "the name of a folder";
      case "FILE" -> "the name of a file";
      case "SECONDS" -> "a whole number of seconds from 1 to 99999";
      default -> "one of the words " + String.join(", ", choices);
    };
  }

  /** Returns the option with its value, such as {@code --units km|mi}. */
  public String usage() {
    String behind = choices.isEmpty() ? value : String.join("|", choices);
    return behind.isEmpty() ? written : written + " " + behind;
  }

  /** Returns the description of the option. */
  public String meaning() {
    return meaning;
  }
}
