package taperbook.command;

import java.util.ArrayList;
import java.util.List;

/** Text in lines of a width, the later ones of a paragraph indented. */
final class IndentedText {
  /** The widest lines, in characters: longer ones are hard to follow. */
  private static final int MOST_WIDTH = 80;

  private final int width;
  private final List<String> lines = new ArrayList<>();

  /**
   * An empty text.
   *
   * @param width characters in a line where it is shown
   */
  IndentedText(int width) {
    this.width = Math.min(MOST_WIDTH, width);
  }

  /** A line that is left empty. */
  void gap() {
    lines.add("");
  }

  /** A paragraph without an indent. */
  void paragraph(String text) {
    paragraph("", 0, text);
  }

  /**
   * A paragraph, wrapped between words; no-break spaces hold words together.
   *
   * @param lead what stands before the text on the first line, kept as it is
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

  /** Words without control characters, which could steer the terminal. */
  private static List<String> words(String text) {
    String shown = text.replaceAll("\\p{Cntrl}", " ").strip();
    return shown.isEmpty() ? List.of() : List.of(shown.split(" +"));
  }

  List<String> lines() {
    return List.copyOf(lines);
  }
}
