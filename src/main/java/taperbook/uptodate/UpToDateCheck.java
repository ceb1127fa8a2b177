package taperbook.uptodate;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import taperbook.input.folder.RegularFile;

/**
 * Handles {@code report} if nothing has changed, before the program itself is loaded. It only
 * handles cases in which the whole program would print the same output, and leaves all other cases
 * to it.
 */
public final class UpToDateCheck {
  private static final String COMMAND = "report";
  private static final String OPTION = "--folder";
  private static final String ENDING = ".md";

  private final Path root;
  private final Path reports;
  private final List<String> names;

  private UpToDateCheck(Path root, List<String> names) {
    this.root = root;
    this.reports = root.resolve("reports");
    this.names = names;
  }

  /**
   * Returns true if there was nothing to do and a message was printed.
   *
   * @param program the jar of this program; other kinds of program are never up to date
   * @param environment the part of the environment that reports depend on
   */
  public static boolean nothingToDo(
      String[] arguments, Path program, String environment, PrintStream out) {
    try {
      UpToDateCheck look = parseArguments(arguments);
      return look != null && look.nothingToDo(program, environment, out);
    } catch (IOException | RuntimeException e) {
      return false;
    }
  }

  /**
   * Returns the message for a report that is up to date, in English: a language that comes first on
   * the class path needs {@code taperbook.Main}, which does not start here.
   */
  private static String upToDate(String name) {
    return name.concat("  up to date");
  }

  private static @Nullable UpToDateCheck parseArguments(String[] arguments) {
    if (arguments.length == 0 || !arguments[0].equals(COMMAND)) {
      return null;
    }
    String folder = "";
    List<String> names = new ArrayList<>();
    for (int i = 1; i < arguments.length; i++) {
      String argument = arguments[i];
      if (!argument.startsWith("-")) {
        names.add(argument);
      } else if (argument.equals(OPTION) && folder.isEmpty() && i + 1 < arguments.length) {
        folder = arguments[++i];
        if (folder.isEmpty()) {
          return null;
        }
      } else {
        return null;
      }
    }
    try {
      return new UpToDateCheck(Path.of(folder), names);
    } catch (InvalidPathException e) {
      return null;
    }
  }

  private boolean nothingToDo(Path program, String environment, PrintStream out)
      throws IOException {
    StatCache cache = RegularFile.isOutside(root, reports) ? null : StatCache.in(reports);
    if (cache == null
        || !cache.environment().equals(environment)
        || !cache.program().equals(StatCacheUpdate.programStatus(program))
        || (names.isEmpty() && !areFoldersCurrent(cache))) {
      return false;
    }
    for (String name : names) {
      StatCache.Section section = cache.section(name);
      if (section == null
          || !isPlain(name)
          || !section.isCurrent(root)
          || OutputStatus.isLocked(reports, name)
          || !OutputStatus.isWhole(reports, name, section.fingerprint)) {
        return false;
      }
    }
    for (String name : names) {
      out.println(upToDate(name));
    }
    return !names.isEmpty();
  }

  /**
   * Returns true for names that can be printed without escaping; this includes all names of
   * reports.
   */
  private static boolean isPlain(String name) {
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      if (c <= ' ' || c >= 0x7f || c == '/' || c == '*') {
        return false;
      }
    }
    return true;
  }

  /** Reads the names of all reports if the folders are unchanged. */
  private boolean areFoldersCurrent(StatCache cache) throws IOException {
    StatCache.Section folders = cache.section(StatCache.FOLDERS);
    if (folders == null || !folders.isCurrent(root)) {
      return false;
    }
    List<String> files = new ArrayList<>();
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(reports)) {
      for (Path entry : entries) {
        String name = String.valueOf(entry.getFileName());
        if (name.endsWith(ENDING) && !name.startsWith(".")) {
          files.add(name);
        }
      }
    }
    Collections.sort(files);
    for (String file : files) {
      names.add(file.substring(0, file.length() - ENDING.length()));
    }
    return true;
  }
}
