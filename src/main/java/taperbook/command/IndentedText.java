package taperbook.command;

import java.util.ArrayList;
import java.util.List;

/** Wraps text to a width, with hanging indents. */
final class IndentedText {
  /** Maximum line width, characters: longer lines are hard to follow. */
  private static final int MAX_WIDTH = 80;

  private final int width;
  private final List<String> lines = new ArrayList<>();

  /**
   * Creates an empty text.
   *
   * @param width line width of the output, characters
   */
  IndentedText(int width) {
    this.width = Math.min(MAX_WIDTH, width);
  }

  /** Adds an empty line. */
  void gap() {
    lines.add("");
  }

  /** Adds a paragraph without an indent. */
  void paragraph(String text) {
    paragraph("", 0, text);
  }

  /**
   * Adds a paragraph, wrapped between words; no-break spaces keep words together.
   *
   * @param lead prefix of the first line, unchanged
   * @param indent spaces before every later line
   * @param text the words
   */
  void paragraph(String lead, int indent, String text) {
    StringBuilder line = new StringBuilder(lead);
    boolean fresh = true;
    for (String word : words(text)) {
      if (!fresh && line.length() + 1 + word.length() > width) {
        end(line, indent);
        fresh = true;
      }
      line.append(fresh ? "" : " ").append(word);
      fresh = false;
      while (line.length() > width) {
        String rest = line.substring(width);
        line.setLength(width);
        end(line, indent);
        line.append(rest);
      }
    }
    end(line, indent);
  }

  private void end(StringBuilder line, int indent) {
    lines.add(line.toString().replace('\u00a0', ' ').stripTrailing());
    line.setLength(0);
    line.append(" ".repeat(indent));
  }

  /** Splits text into words without control characters, which could control the terminal. */
  private static List<String> words(String text) {
    String shown = text.replaceAll("\\p{Cntrl}", " ").strip();
    return shown.isEmpty() ? List.of() : List.of(shown.split(" +"));
  }

  List<String> lines() {
    return List.copyOf(lines);
  }
}
