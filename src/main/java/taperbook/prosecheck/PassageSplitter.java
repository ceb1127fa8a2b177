package taperbook.prosecheck;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Splits an article into passages, in order. */
final class PassageSplitter {
  private static final Pattern HEADING = Pattern.compile("^ {0,3}#{1,6}(\\s+|$)");
  private static final Pattern ITEM = Pattern.compile("^\\s*(?:[-+*]|\\d{1,9}[.)])\\s+");
  private static final Pattern QUOTE = Pattern.compile("^ {0,3}>\\s?");
  private static final Pattern ROW = Pattern.compile("^\\s*\\|.*");
  private static final Pattern RULE = Pattern.compile("^[\\s|:=*_-]+$");
  private static final int COLUMNS_OF_A_LIST = 2;

  private final int firstLine;
  private final List<Passage> passages = new ArrayList<>();
  private final Set<Integer> marked;
  private Passage.Builder open = new Passage.Builder();
  private Passage.Kind kind = Passage.Kind.TEXT;

  /**
   * Splits an article.
   *
   * @param markdown the article
   * @param firstLine the line of its file that it begins on
   */
  PassageSplitter(String markdown, int firstLine) {
    this.firstLine = firstLine;
    MarkdownStripper markup = new MarkdownStripper(markdown);
    this.marked =
        markup.marked().stream().map(i -> i + firstLine).collect(Collectors.toUnmodifiableSet());
    String[] lines = markup.prose().split("\n", -1);
    for (int i = 0; i < lines.length; i++) {
      line(lines[i], i);
    }
    close();
  }

  List<Passage> all() {
    return passages;
  }

  /** Returns the lines of the file, from 1, that contain a mark. */
  Set<Integer> markedLines() {
    return marked;
  }

  private void line(String line, int index) {
    Matcher heading = HEADING.matcher(line);
    Matcher item = ITEM.matcher(line);
    Matcher quote = QUOTE.matcher(line);
    if (line.isBlank() || RULE.matcher(line).matches()) {
      close();
    } else if (heading.find()) {
      close();
      append(line, heading.end(), index);
      kind = Passage.Kind.HEADING;
      close();
    } else if (quote.find()) {
      append(line, quote.end(), index);
      kind = Passage.Kind.FOREIGN;
    } else if (ROW.matcher(line).matches()) {
      close();
      row(line, index);
      close();
    } else if (item.find()) {
      close();
      append(line, item.end(), index);
    } else {
      append(line, 0, index);
    }
  }

  /**
   * A row of two cells reads like "peak: 171 kW"; a wider one would require interpreting its
   * columns.
   */
  private void row(String line, int index) {
    String inner = line.strip().replaceFirst("^\\|", "").replaceFirst("\\|$", "");
    if (inner.split("(?<!\\\\)\\|", -1).length > COLUMNS_OF_A_LIST) {
      kind = Passage.Kind.FOREIGN;
    }
    int first = line.indexOf('|');
    append(line.substring(0, first) + " " + line.substring(first + 1).replace('|', ':'), 0, index);
  }

  private void append(String line, int from, int index) {
    String plain = MarkdownStripper.plain(line.substring(from));
    for (int i = 0; i < plain.length(); i++) {
      char c = plain.charAt(i);
      if (c != MarkdownStripper.GONE) {
        boolean space = Character.isWhitespace(c) || Character.isSpaceChar(c);
        open.add(space ? ' ' : c, index + firstLine, from + i + 1);
      }
    }
    open.add(' ', index + firstLine, line.length() + 1);
  }

  private void close() {
    if (!open.isEmpty()) {
      passages.add(open.build(kind));
    }
    open = new Passage.Builder();
    kind = Passage.Kind.TEXT;
  }
}
