package taperbook.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** A place behind a command's word: how help writes it, and what fits there. */
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

  /** How help writes it. */
  String written() {
    return written;
  }

  /** The words that fit; empty if they depend on the folder, or anything new fits. */
  public List<String> words() {
    return this == COMMAND ? Arrays.stream(Command.values()).map(Command::word).toList() : words;
  }

  /** True if more of the same may follow. */
  boolean repeats() {
    return written.contains("...");
  }

  /** Its name in a completion script. */
  String scriptName() {
    return name().toLowerCase(Locale.ROOT);
  }
}
