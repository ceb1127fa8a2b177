package taperbook.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Paper sizes.
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

  /** Returns the name used on the command line, in front matter, and in file names. */
  public String word() {
    return word;
  }

  /** Returns width and height in CSS syntax. */
  public String size() {
    return size;
  }

  /** Returns the names of all sizes. */
  public static List<String> words() {
    return Arrays.stream(values()).map(Paper::word).toList();
  }

  /** Returns the paper size with this name. */
  public static Optional<Paper> ofWord(String word) {
    return Arrays.stream(values()).filter(p -> p.word.equals(word)).findFirst();
  }
}
