package taperbook.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Kinds of operands of a command: their form in help texts and their possible values. */
public enum OperandKind {
  REPORT("NAME"),
  REPORTS("NAME ..."),
  NUMBER("ID"),
  SESSION_OF_REPORT("SESSION"),
  PDF("FILE.pdf"),
  NEW_NAME("NAME"),
  SESSION("SESSION"),
  RANGE_TESTS("[RANGE-TEST ...]"),
  SHEET_KIND("[range-test]", "range-test"),
  COMMAND("COMMAND"),
  SHELL("bash|zsh|fish", "bash", "zsh", "fish");

  private final String written;
  private final List<String> words;

  OperandKind(String written, String... words) {
    this.written = written;
    this.words = List.of(words);
  }

  /** Returns the form in help texts. */
  String written() {
    return written;
  }

  /**
   * Returns the possible values; empty if they depend on the folder or if any new value is
   * possible.
   */
  public List<String> words() {
    return this == COMMAND ? Arrays.stream(Command.values()).map(Command::word).toList() : words;
  }

  /** Returns true if more operands of the same kind may follow. */
  boolean repeats() {
    return written.contains("...");
  }

  /** Returns the name in a completion script. */
  String scriptName() {
    return name().toLowerCase(Locale.ROOT);
  }
}
