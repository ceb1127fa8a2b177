package taperbook.input.csv;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import taperbook.session.InputFile;

/**
 * Detects the layout of an external CSV file. The delimiter is the one that gives the most lines
 * the same number of cells. Among such lines above the first one with readings, the header is the
 * one with the most different words, because titles and notes above it may be padded with
 * delimiters.
 */
public final class LayoutDetector {
  private static final String CANDIDATES = ",;\t";
  private static final int MAX_LINES = 200;
  private static final Pattern NUMERIC = Pattern.compile("[+-]?[0-9][0-9.,:/ TZeE+-]*");

  private final List<String> lines;
  private char delimiter = ',';
  private int cells;
  private int agreeing;

  private LayoutDetector(String text) {
    this.lines = text.lines().limit(MAX_LINES).toList();
    for (int i = 0; i < CANDIDATES.length(); i++) {
      weigh(CANDIDATES.charAt(i));
    }
  }

  /** Returns the layout, if the file is text in lines of cells. */
  public static Optional<CsvLayout> of(InputFile file) {
    Optional<String> utf8 = Utf8Decoder.decode(file).value();
    return utf8.isPresent()
        ? of(utf8.get(), TextEncoding.UTF_8)
        : TextEncoding.guess(file)
            .flatMap(other -> other.decode(file).value().flatMap(text -> of(text, other)));
  }

  private static Optional<CsvLayout> of(String text, TextEncoding encoding) {
    return new LayoutDetector(text).layout(text, encoding);
  }

  private void weigh(char candidate) {
    Map<Integer, Integer> lengths = new HashMap<>();
    for (String line : lines) {
      int length = split(line, candidate).size();
      int count = lengths.merge(length, 1, Integer::sum);
      if (length > 1 && count > agreeing) {
        delimiter = candidate;
        cells = length;
        agreeing = count;
      }
    }
  }

  private Optional<CsvLayout> layout(String text, TextEncoding encoding) {
    int head = head();
    if (head < 0 || cells < 2) {
      return Optional.empty();
    }
    int units = 0;
    for (String line : lines.subList(head + 1, lines.size())) {
      List<String> found = split(line, delimiter);
      if (!line.isBlank() && numericShare(found) >= 0.5) {
        break;
      }
      units += line.isBlank() ? 0 : 1;
    }
    CsvLayout plain = new CsvLayout(head, units, Optional.empty(), encoding);
    boolean found = DelimiterDetector.of(plain.withoutLeadingLines(text)) == delimiter;
    return Optional.of(
        found ? plain : new CsvLayout(head, units, Optional.of(delimiter), encoding));
  }

  /** Returns the index of the header line; -1 if there is none. */
  private int head() {
    int head = -1;
    long max = 0;
    for (int i = 0; i < lines.size(); i++) {
      List<String> found = split(lines.get(i), delimiter);
      if (found.size() != cells) {
        continue;
      }
      if (numericShare(found) >= 0.5 && head >= 0) {
        return head;
      }
      long words = found.stream().filter(c -> !c.isBlank()).distinct().count();
      if (numericShare(found) < 0.5 && words > max) {
        head = i;
        max = words;
      }
    }
    return head;
  }

  private static double numericShare(List<String> cells) {
    long filled = cells.stream().filter(c -> !c.isBlank()).count();
    long numeric = cells.stream().filter(c -> NUMERIC.matcher(c.strip()).matches()).count();
    return filled == 0 ? 0 : (double) numeric / filled;
  }

  private static List<String> split(String line, char delimiter) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (c == delimiter && !quoted) {
        cells.add(cell.toString());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(cell.toString());
    return cells;
  }
}
