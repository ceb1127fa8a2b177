package taperbook.uptodate;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The entry point that the launcher tries first: handles {@code report} if nothing has changed,
 * before the program itself is loaded. It only handles cases in which the whole program would print
 * the same output, and leaves all other cases to it.
 */
public final class UpToDateCheck {
  /** The status that makes the launcher start the whole program. */
  private static final int NOT_KNOWN = 75;

  private static final String ENDING = ".md";

  private UpToDateCheck() {}

  /** Ends with 0 after printing a message if reports are up to date; otherwise prints nothing. */
  public static void main(String[] arguments) {
    Path program = Path.of(System.getProperty("java.class.path", ""));
    String date = System.getenv().getOrDefault("SOURCE_DATE_EPOCH", "");
    if (!nothingToDo(arguments, program, date, System.out)) {
      System.exit(NOT_KNOWN);
    }
  }

  /**
   * Returns true if there was nothing to do and a message was printed. It is in English: a language
   * that comes first on the class path needs {@code taperbook.Main}, which does not start here.
   *
   * @param program the jar of this program; other kinds of program are never up to date
   * @param environment the part of the environment that reports depend on
   */
  static boolean nothingToDo(
      String[] arguments, Path program, String environment, PrintStream out) {
    if (arguments.length == 0 || !arguments[0].equals("report")) {
      return false;
    }
    String folder = "";
    List<String> names = new ArrayList<>();
    for (int i = 1; i < arguments.length; i++) {
      boolean first = folder.isEmpty() && i + 1 < arguments.length;
      if (!arguments[i].startsWith("-")) {
        names.add(arguments[i]);
      } else if (first && arguments[i].equals("--folder") && !arguments[i + 1].isEmpty()) {
        folder = arguments[++i];
      } else {
        return false;
      }
    }
    try {
      Path root = Path.of(folder);
      StatCache cache = StatCache.in(root, program, environment);
      if (names.isEmpty() && cache.areFoldersCurrent()) {
        names.addAll(reportNames(root.resolve("reports")));
      }
      if (names.isEmpty() || !names.stream().allMatch(n -> isPlain(n) && cache.isUpToDate(n))) {
        return false;
      }
    } catch (IOException | RuntimeException e) {
      return false;
    }
    names.forEach(name -> out.println(name + "  up to date"));
    return true;
  }

  /** Returns true for names that can be printed without escaping, as those of all reports. */
  private static boolean isPlain(String name) {
    return name.chars().allMatch(c -> c > ' ' && c < 0x7f && c != '/' && c != '*');
  }

  private static List<String> reportNames(Path reports) throws IOException {
    try (Stream<Path> entries = Files.list(reports)) {
      return entries
          .map(entry -> String.valueOf(entry.getFileName()))
          .filter(file -> file.endsWith(ENDING) && !file.startsWith("."))
          .sorted()
          .map(file -> file.substring(0, file.length() - ENDING.length()))
          .toList();
    }
  }
}
