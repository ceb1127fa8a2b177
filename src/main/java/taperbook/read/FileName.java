package taperbook.read;

import java.util.List;
import java.util.regex.Pattern;
import taperbook.problem.Problem;
import taperbook.problem.ProblemCode;
import taperbook.problem.ProblemLog;
import taperbook.problem.Quoted;

/**
 * Which names of files and folders are used. ASCII only, since other letters are stored differently
 * from one file system to the next, and a name must be found again wherever the folder is copied.
 */
public final class FileName {
  private static final Pattern ALLOWED = Pattern.compile("[A-Za-z0-9_-][A-Za-z0-9_.-]*");

  private FileName() {}

  /** True if a name of a file or folder is used. */
  public static boolean isAllowed(String name) {
    return ALLOWED.matcher(name).matches();
  }

  /** True if each part of a path with {@code /} is an allowed name. */
  static boolean isAllowedPath(String path) {
    return List.of(path.split("/", -1)).stream().allMatch(FileName::isAllowed);
  }

  /** What keeps a text from being a name of a file or folder; empty if nothing does. */
  public static List<Problem> problems(String name) {
    ProblemLog log = new ProblemLog("the command line");
    if (!isAllowed(name)) {
      refuse(name, log);
    }
    return log.list();
  }

  static void refuse(String name, ProblemLog log) {
    log.add(
        ProblemCode.NAME_NOT_ALLOWED,
        "the name " + Quoted.of(name),
        "letters a to z, digits, hyphens, underscores, and full stops that do not lead",
        "rename it");
  }
}
