package taperbook.endtoend;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A language made up from the English texts: letters have accents, vowels are doubled, so that
 * texts are about a third longer, and the values of a text come in the opposite order.
 */
final class PseudoLanguage {
  /** The tag of the language, as a translator would set it; qps is reserved for local use. */
  static final String TAG = "qps";

  private static final Path TEXTS = Path.of("src/main/resources/taperbook/i18n");
  private static final Path TEMPLATES = Path.of("templates");

  private static final String PLAIN = "aeiouAEIOUcnsy";
  private static final String ACCENTED = "àëïôûÀËÏÔÛçñšý";

  private static final String FILE_NAME = "\\w[\\w-]*\\.(?:csv|json|md|pdf|html|txt|srt)\\b";

  /** What a translator leaves as it is: values, code, names of files and ids, and escapes. */
  private static final Pattern KEPT =
      Pattern.compile(
          "\\$?\\{\\{.*?}}|\\{\\d+}|\\\\u[0-9a-f]{4}|\\\\.|&[#\\w]+;|--[a-z]+|\\w*_\\w+|"
              + FILE_NAME);

  private static final Pattern VALUE = Pattern.compile("(?<!\\{)\\{(\\d+)}");

  /** Texts that style sheets print, as in {@code content: "page " counter(page)}. */
  private static final Pattern CSS_WORDS =
      Pattern.compile("(?<=content: )\"[a-z ]+\"|(?<=counter\\(page\\) )\"[a-z ]+\"");

  private static final Pattern QUOTED = Pattern.compile("\"((?:\\\\.|[^\"\\\\])*)\"");
  private static final Pattern WORDS_OF_CALL =
      Pattern.compile("\\?(?:string|join)\\(\"[^()]*\"\\)");
  private static final Pattern ATTRIBUTE =
      Pattern.compile("(?<= (?:alt|title|aria-label)=\")[^\"]*(?=\")");

  /** Elements and comments whose content is not text. */
  private static final Map<String, String> SKIPPED =
      Map.of(
          "<#--",
          "-->",
          "<!--",
          "-->",
          "<style",
          "</style>",
          "<script",
          "</script>",
          "<code",
          "</code>");

  private PseudoLanguage() {}

  /** Writes every text and template in this language into a folder for the class path. */
  static void write(Path folder) throws IOException {
    Path texts = Files.createDirectories(folder.resolve("taperbook/i18n"));
    for (Path file : files(TEXTS, ".properties")) {
      Files.writeString(
          texts.resolve(TEXTS.relativize(file)),
          Files.readAllLines(file).stream()
              .map(PseudoLanguage::line)
              .collect(Collectors.joining("\n", "", "\n")));
    }
    Path templates = Files.createDirectories(folder.resolve("taperbook/templates"));
    for (Path file : files(TEMPLATES, ".ftlh")) {
      Files.writeString(
          templates.resolve(TEMPLATES.relativize(file)),
          new TemplateText(Files.readString(file)).translated());
    }
    for (Path file : files(TEMPLATES, ".css")) {
      Files.writeString(
          templates.resolve(TEMPLATES.relativize(file)),
          CSS_WORDS
              .matcher(Files.readString(file))
              .replaceAll(words -> Matcher.quoteReplacement(accented(words.group()))));
    }
  }

  private static List<Path> files(Path folder, String ending) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(file -> file.toString().endsWith(ending)).sorted().toList();
    }
  }

  private static String line(String line) {
    int equals = line.indexOf('=');
    if (line.startsWith("#") || equals < 0) {
      return line;
    }
    String key = line.substring(0, equals);
    String text = line.substring(equals + 1);
    return key + "=" + (key.equals("page.language") ? TAG : reordered(accented(text)));
  }

  /** Accents a text. */
  static String accented(String text) {
    StringBuilder out = new StringBuilder();
    Matcher kept = KEPT.matcher(text);
    int end = 0;
    while (kept.find()) {
      accent(text.substring(end, kept.start()), out);
      out.append(kept.group());
      end = kept.end();
    }
    accent(text.substring(end), out);
    return out.toString();
  }

  private static void accent(String text, StringBuilder out) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      int letter = PLAIN.indexOf(c);
      if (letter < 0) {
        out.append(c);
        continue;
      }
      char accented = ACCENTED.charAt(letter);
      out.append(accented);
      if ("aeiouAEIOU".indexOf(c) >= 0) {
        out.append(String.valueOf(accented).toLowerCase(Locale.ROOT));
      }
    }
  }

  /** Puts the different values of a text into the opposite order. */
  private static String reordered(String text) {
    List<String> order =
        VALUE.matcher(text).results().map(value -> value.group(1)).distinct().toList();
    int last = order.size() - 1;
    return VALUE
        .matcher(text)
        .replaceAll(value -> "{" + order.get(last - order.indexOf(value.group(1))) + "}");
  }

  /** The text of a template: what is between instructions and tags, and words in these. */
  private static final class TemplateText {
    private final String template;
    private final StringBuilder out = new StringBuilder();
    private int at;

    TemplateText(String template) {
      this.template = template;
    }

    String translated() {
      int text = 0;
      while (at < template.length()) {
        int start = at;
        String code = code();
        if (code.isEmpty()) {
          at++;
        } else {
          out.append(accented(template.substring(text, start))).append(code);
          text = at;
        }
      }
      return out.append(accented(template.substring(text))).toString();
    }

    /** Passes what is not text at this place and returns it translated; empty for text. */
    private String code() {
      int start = at;
      for (Map.Entry<String, String> skipped : SKIPPED.entrySet()) {
        if (template.startsWith(skipped.getKey(), at)) {
          at = template.indexOf(skipped.getValue(), at) + skipped.getValue().length();
          return template.substring(start, at);
        }
      }
      if (template.startsWith("${", at)) {
        passInterpolation();
        return words(template.substring(start, at), WORDS_OF_CALL, QUOTED);
      }
      if (template.startsWith("<", at) && template.substring(at + 1, at + 2).matches("[a-z#@/!]")) {
        passTag();
        return tag(template.substring(start, at));
      }
      return "";
    }

    private void passInterpolation() {
      int depth = 0;
      do {
        char c = template.charAt(at);
        if (c == '"') {
          passQuoted();
          continue;
        }
        depth += c == '{' ? 1 : c == '}' ? -1 : 0;
        at++;
      } while (depth > 0 || template.charAt(at - 1) == '$');
    }

    /** Passes a tag or an instruction; a tag may contain instructions. */
    private void passTag() {
      int depth = 0;
      at++;
      while (depth > 0 || template.charAt(at) != '>') {
        char c = template.charAt(at);
        if (c == '"') {
          passQuoted();
        } else if (isInstruction()) {
          passTag();
        } else {
          depth += c == '(' ? 1 : c == ')' ? -1 : 0;
          at++;
        }
      }
      at++;
    }

    private void passQuoted() {
      at++;
      while (template.charAt(at) != '"') {
        if (isInstruction()) {
          passTag();
        } else if (template.startsWith("${", at)) {
          passInterpolation();
        } else {
          at += template.charAt(at) == '\\' ? 2 : 1;
        }
      }
      at++;
    }

    private boolean isInstruction() {
      return template.startsWith("<#", at) || template.startsWith("</#", at);
    }

    private static String tag(String tag) {
      if (tag.startsWith("<@") || tag.startsWith("<#macro")) {
        return QUOTED.matcher(tag).replaceAll(TemplateText::parameter);
      }
      return tag.startsWith("<#") ? tag : words(tag, ATTRIBUTE, Pattern.compile(".+"));
    }

    /** A parameter that begins with a capital is text; others are names of styles and ids. */
    private static String parameter(MatchResult quoted) {
      String text = quoted.group(1);
      String translated =
          text.matches("(?s) ?[A-Z].*") ? new TemplateText(text).translated() : text;
      return Matcher.quoteReplacement('"' + translated + '"');
    }

    /** Translates what an inner pattern finds in what an outer one finds. */
    private static String words(String code, Pattern outer, Pattern inner) {
      return outer
          .matcher(code)
          .replaceAll(
              found ->
                  Matcher.quoteReplacement(
                      inner
                          .matcher(found.group())
                          .replaceAll(
                              text ->
                                  Matcher.quoteReplacement(
                                      new TemplateText(text.group()).translated()))));
    }
  }
}
