package taperbook.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A size of paper.
 *
 * @see <a href="https://www.iso.org/standard/36631.html">ISO 216 for A4; ANSI/ASME Y14.1 for
 *     letter, size A</a>
 */
public enum Paper {
  /** 210 mm by 297 mm. */
  A4("a4", "210mm 297mm"),
  /** 8.5 in by 11 in. */
  LETTER("letter", "8.5in 11in");

  private final String word;
  private final String size;

  Paper(String word, String size) {
    this.word = word;
    this.size = size;
  }

  /** The word on the command line, in a front matter, and in names of files. */
  public String word() {
    return word;
  }

  /** Width and height as a style sheet has them. */
  public String size() {
    return size;
  }

  /** The words of all sizes. */
  public static List<String> words() {
    return Arrays.stream(values()).map(Paper::word).toList();
  }

  /** The paper with this word. */
  public static Optional<Paper> ofWord(String word) {
    return Arrays.stream(values()).filter(p -> p.word.equals(word)).findFirst();
  }
}
