package taperbook.prosecheck;

import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Removes from Markdown everything that a reader does not see as prose: code, comments, link
 * targets, tags, and calls. Every line keeps its length, so that positions match those in the file.
 */
final class MarkdownStripper {
  /** Replaces a removed character without leaving a space between its neighbours. */
  static final char GONE = '\u0000';

  private static final Pattern DELIBERATE = Pattern.compile("<!--\\s*deliberate\\s*-->");
  private static final Pattern FENCE =
      Pattern.compile("(?m)^ {0,3}(`{3,}+|~{3,}+)[^\n]*+\n(?s:.*?)(?:^ {0,3}\\1[`~]*[ \t]*$|\\z)");
  private static final Pattern CODE = Pattern.compile("(?<!`)(`+)(?!`)(?s:.+?)(?<!`)\\1(?!`)");
  private static final Pattern CALL =
      Pattern.compile(
          "\\$\\{[^}\"']{0,300}+(?:(?:\"[^\"\n]{0,300}+\"|'[^'\n]{0,300}+')[^}\"']{0,300}+){0,20}\\}");
  private static final Pattern COMMENT =
      Pattern.compile("(?s)<!--.*?(?:-->|\\z)|<#--.*?(?:-->|\\z)");
  private static final Pattern TAG =
      Pattern.compile("</?[#@]?[a-zA-Z][^<>\n]*>|<https?:[^>\\s]*>|https?://[^\\s)>]+");
  private static final Pattern TARGET =
      Pattern.compile(
          "(?<=\\])\\([^()\n]*(?:\\([^()\n]*\\)[^()\n]*){0,9}\\)|(?<=\\])\\[[^\\]\n]*\\]");
  private static final Pattern DEFINITION = Pattern.compile("(?m)^ {0,3}\\[[^\\]\n]+\\]:[^\n]*$");
  private static final Pattern EMPHASIS = Pattern.compile("\\*+|~~|(?<!\\w)_+|_+(?!\\w)|[\\[\\]]");

  private final String prose;
  private final Set<Integer> marked = new TreeSet<>();

  /** Extracts the prose of an article and its marks. */
  MarkdownStripper(String markdown) {
    String text = blank(FENCE, markdown, ' ');
    text = blank(CODE, text, ' ');
    Matcher mark = DELIBERATE.matcher(text);
    while (mark.find()) {
      marked.add((int) text.substring(0, mark.start()).chars().filter(c -> c == '\n').count());
    }
    text = blank(COMMENT, text, ' ');
    text = blank(CALL, text, Passage.CALL);
    text = blank(DEFINITION, text, ' ');
    text = blank(TARGET, text, GONE);
    text = blank(TAG, text, ' ');
    this.prose = text;
  }

  /** Returns the text with spaces in place of the removed parts; as long as the article. */
  String prose() {
    return prose;
  }

  /** Returns the indices, from 0, of the lines with a mark {@code <!-- deliberate -->}. */
  Set<Integer> marked() {
    return marked;
  }

  /** Returns a piece of prose without its emphasis. */
  static String plain(String piece) {
    return blank(EMPHASIS, piece, GONE);
  }

  private static String blank(Pattern what, String text, char with) {
    return what.matcher(text)
        .replaceAll(
            found -> {
              StringBuilder blank = new StringBuilder();
              for (char c : found.group().toCharArray()) {
                blank.append(c == '\n' ? c : blank.isEmpty() || with != Passage.CALL ? with : GONE);
              }
              return Matcher.quoteReplacement(blank.toString());
            });
  }
}
