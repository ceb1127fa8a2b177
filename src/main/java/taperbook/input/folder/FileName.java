package taperbook.input.folder;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;

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

  /** Returns why a text is not a valid name of a file or folder; empty if it is valid. */
  public static List<Problem> problems(String name) {
    ProblemLog log = new ProblemLog("the command line");
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
            "the names " + Quoted.of(twin) + " and " + Quoted.of(name),
            "names that differ by more than case, since Windows and macOS keep one of them only",
            "rename one");
      }
    }
  }

  static void refuse(String name, ProblemLog log) {
    String expected =
        "letters a to z, digits, hyphens, underscores, and full stops that do not lead";
    if (List.of(name.split("/", -1)).stream().allMatch(ALLOWED.asMatchPredicate())) {
      expected =
          name.endsWith(".")
              ? "a name that does not end with a full stop, which Windows leaves out"
              : "another name, since Windows keeps this one for a device";
    }
    log.add(ProblemCode.NAME_NOT_ALLOWED, "the name " + Quoted.of(name), expected, "rename it");
  }
}
