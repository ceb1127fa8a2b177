package taperbook.app;

import java.util.ArrayList;
import java.util.List;

/** Text for a terminal: lines of at most 80 characters, the later ones of a paragraph indented. */
final class PlainText {
  static final int WIDTH = 80;

  private final List<String> lines = new ArrayList<>();

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
      if (!fresh && line.length() + 1 + word.length() > WIDTH) {
        end(line, indent);
        fresh = true;
      }
      line.append(fresh ? "" : " ").append(word);
      fresh = false;
      while (line.length() > WIDTH) {
        String rest = line.substring(WIDTH);
        line.setLength(WIDTH);
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
