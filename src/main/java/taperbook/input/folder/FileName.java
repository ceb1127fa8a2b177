package taperbook.input.folder;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Texts;

/**
 * Permitted names of files and folders. ASCII only, because file systems store other letters
 * differently and a name must be found again wherever the folder is copied. For the same reason,
 * names are refused that Windows reserves for devices or cannot store.
 *
 * @see <a href="https://learn.microsoft.com/en-us/windows/win32/fileio/naming-a-file">Microsoft,
 *     Naming Files, Paths, and Namespaces</a>
 */
public final class FileName {
  private static final Pattern ALLOWED = Pattern.compile("[A-Za-z0-9_-][A-Za-z0-9_.-]*");

  /** Device names, alone or before a full stop, in any case. */
  private static final Pattern DEVICE =
      Pattern.compile("(con|prn|aux|nul|com[0-9]|lpt[0-9])([.].*)?", Pattern.CASE_INSENSITIVE);

  private FileName() {}

  /** Returns true if a name of a file or folder is permitted. */
  public static boolean isAllowed(String name) {
    return ALLOWED.matcher(name).matches()
        && !DEVICE.matcher(name).matches()
        && !name.endsWith(".");
  }

  /** Returns true if each part of a path with {@code /} is permitted. */
  static boolean isAllowedPath(String path) {
    return List.of(path.split("/", -1)).stream().allMatch(FileName::isAllowed);
  }

  /** Returns the folders above a path with {@code /}, the outermost first. */
  public static List<String> parents(String path) {
    return IntStream.range(0, path.length())
        .filter(i -> path.charAt(i) == '/')
        .mapToObj(i -> path.substring(0, i))
        .toList();
  }

  /** Returns why a text is not a valid name of a file or folder; empty if it is valid. */
  public static List<Problem> problems(String name) {
    ProblemLog log = new ProblemLog(Texts.of("input.file_name.command_line"));
    if (!isAllowed(name)) {
      refuse(name, log);
    }
    return log.list();
  }

  /** Reports names that differ only in case: some file systems do not distinguish them. */
  static void reportCaseCollisions(List<String> names, ProblemLog log) {
    Map<String, String> first = new TreeMap<>();
    for (String name : names) {
      String twin = first.putIfAbsent(name.toLowerCase(Locale.ROOT), name);
      if (twin != null) {
        log.add(
            ProblemCode.NAME_NOT_ALLOWED,
            Texts.of("input.file_name.names_and", Quoted.of(twin), Quoted.of(name)),
            Texts.of("input.file_name.names_that_differ_by_more"),
            Texts.of("input.file_name.rename_one"));
      }
    }
  }

  static void refuse(String name, ProblemLog log) {
    String expected = Texts.of("input.file_name.letters_to_z_digits_hyphens");
    if (List.of(name.split("/", -1)).stream().allMatch(ALLOWED.asMatchPredicate())) {
      expected =
          name.endsWith(".")
              ? Texts.of("input.file_name.name_that_does_not_end")
              : Texts.of("input.file_name.another_name_since_windows_keeps");
    }
    log.add(
        ProblemCode.NAME_NOT_ALLOWED,
        Texts.of("input.file_name.name", Quoted.of(name)),
        expected,
        Texts.of("input.file_name.rename_it"));
  }
}
