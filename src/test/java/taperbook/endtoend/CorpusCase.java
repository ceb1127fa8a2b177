package taperbook.endtoend;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An invalid input: edits of the valid folder, and every expected problem.
 *
 * @param kind the heading of the case
 * @param title what is wrong
 * @param edits lines such as {@code R: old => new}
 * @param problems lines such as {@code R:4:3 [cell-not-a-number] found | expected | to fix}
 */
record CorpusCase(String kind, String title, List<String> edits, List<String> problems) {
  private static final Map<String, String> SHORT =
      Map.of(
          "R", "sessions/stop/readings.csv",
          "C", "sessions/stop/conditions.csv",
          "T", "sessions/drive/range-test.csv",
          "L", "sessions/drive/legs.csv",
          "M", "reports/look.md");
  private static final Pattern ESCAPE =
      Pattern.compile("\\\\(?:x([0-9a-fA-F]{2})|u([0-9a-fA-F]{4})|([ntr0\\\\]))");
  private static final Pattern REPEAT = Pattern.compile("\\{(.+?)\\*([0-9]+)\\}", Pattern.DOTALL);

  CorpusCase {
    edits = List.copyOf(edits);
    problems = List.copyOf(problems);
  }

  @Override
  public String toString() {
    return kind + ": " + title;
  }

  /** The path for a short name in a case. */
  static String path(String name) {
    return SHORT.getOrDefault(name, name);
  }

  /** The problems with full paths. */
  List<String> problemsWithFullPaths() {
    return problems.stream()
        .map(line -> line.replaceFirst("^[RCTLM](?=[: ])", fullPath(line)))
        .toList();
  }

  private static String fullPath(String line) {
    return SHORT.getOrDefault(line.substring(0, 1), "");
  }

  /** Applies the edits to a copy of the valid folder. */
  void applyTo(Path folder) throws IOException {
    for (String edit : edits) {
      int colon = edit.indexOf(": ");
      Path file = folder.resolve(bytesToName(unescaped(path(edit.substring(0, colon)))));
      if (!Files.exists(file)) {
        Files.createDirectories(file.resolve("..").normalize());
      }
      apply(file, edit.substring(colon + 2));
    }
  }

  private static void apply(Path file, String what) throws IOException {
    if (what.equals("delete")) {
      Files.delete(file);
    } else if (what.equals("folder")) {
      Files.createDirectory(file);
    } else if (what.startsWith("link ")) {
      Files.deleteIfExists(file);
      Files.createSymbolicLink(file, Path.of(what.substring("link ".length())));
    } else if (what.startsWith("bytes ")) {
      write(file, " ".repeat(Integer.parseInt(what.substring("bytes ".length()))));
    } else if (what.startsWith("=")) {
      write(file, unescaped(what.substring(1).stripLeading()));
    } else if (what.startsWith("+ ")) {
      write(file, read(file) + unescaped(what.substring(2)));
    } else {
      replace(file, what);
    }
  }

  private static void replace(Path file, String what) throws IOException {
    int arrow = what.indexOf(" =>");
    String old = unescaped(what.substring(0, arrow));
    String rest = what.substring(arrow + 3);
    String fresh = unescaped(rest.startsWith(" ") ? rest.substring(1) : rest);
    String text = read(file);
    int at = text.indexOf(old);
    if (at < 0) {
      throw new IllegalArgumentException(file + " does not hold " + old);
    }
    write(file, text.substring(0, at) + fresh + text.substring(at + old.length()));
  }

  /** Returns one character for each byte, so that a case may contain any byte. */
  private static String unescaped(String written) {
    String bytes =
        new String(written.getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1);
    String plain = ESCAPE.matcher(bytes).replaceAll(m -> Matcher.quoteReplacement(escaped(m)));
    return REPEAT
        .matcher(plain)
        .replaceAll(m -> Matcher.quoteReplacement(m.group(1).repeat(Integer.parseInt(m.group(2)))));
  }

  private static String escaped(java.util.regex.MatchResult found) {
    if (found.group(1) != null) {
      return Character.toString(Integer.parseInt(found.group(1), 16));
    }
    if (found.group(2) != null) {
      String character = Character.toString(Integer.parseInt(found.group(2), 16));
      return new String(character.getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1);
    }
    return switch (found.group(3)) {
      case "n" -> "\n";
      case "t" -> "\t";
      case "r" -> "\r";
      case "0" -> "\0";
      default -> "\\";
    };
  }

  private static String bytesToName(String bytes) {
    return new String(bytes.getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8);
  }

  private static String read(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.ISO_8859_1);
  }

  private static void write(Path file, String bytes) throws IOException {
    Files.writeString(file, bytes, StandardCharsets.ISO_8859_1);
  }
}
