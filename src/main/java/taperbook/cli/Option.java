package taperbook.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import taperbook.plan.Paper;

/** An option of the command line. */
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

  /** The option that an argument names, by itself or with its value behind an equals sign. */
  static Optional<Option> of(String argument) {
    return Arrays.stream(values())
        .filter(
            o ->
                argument.equals(o.written)
                    || (!o.value.isEmpty() && argument.startsWith(o.written + "=")))
        .findFirst();
  }

  /** The option as it is written. */
  String written() {
    return written;
  }

  /** True if a value goes behind it. */
  boolean takesValue() {
    return !value.isEmpty();
  }

  /** The values to choose from; empty if any will do. */
  List<String> choices() {
    return choices;
  }

  /** True if a path goes behind it. */
  boolean takesPath() {
    return value.equals("DIR") || value.equals("FILE");
  }

  /** True if a value may go behind it. */
  boolean accepts(String given) {
    if (value.equals("SECONDS")) {
      return given.matches("[1-9][0-9]{0,4}");
    }
    return choices.isEmpty() || choices.contains(given);
  }

  /** What goes behind it, in words. */
  String need() {
    return switch (value) {
      case "DIR" -> "the name of a folder";
      case "FILE" -> "the name of a file";
      case "SECONDS" -> "a whole number of seconds from 1 to 99999";
      default -> "one of the words " + String.join(", ", choices);
    };
  }

  /** The option with what goes behind it, such as {@code --units km|mi}. */
  public String usage() {
    String behind = choices.isEmpty() ? value : String.join("|", choices);
    return behind.isEmpty() ? written : written + " " + behind;
  }

  /** What it is for. */
  public String meaning() {
    return meaning;
  }
}
