package taperbook.uptodate;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import taperbook.input.folder.RegularFile;

/**
 * The file status of everything that up-to-date reports depend on, stored in {@code
 * reports/.looks}. It is only a cache: if it is missing or in any doubt, files are read.
 */
final class StatCache {
  /** Enough for the status and path of two hundred thousand files. */
  private static final long LARGEST_BYTES = 32L << 20;

  private static final String FILE = ".looks";
  private static final String HEAD = "taperbook looks 1";
  private static final String END = "end";

  /**
   * The section for what a run over all reports depends on in addition to them: the folders of
   * sessions.
   */
  static final String FOLDERS = "*";

  private final String program;
  private final String environment;
  private final Map<String, Section> sections = new LinkedHashMap<>();

  /** Creates a cache without sections. */
  StatCache(String program, String environment) {
    this.program = program;
    this.environment = environment;
  }

  /** The inputs of a report: its fingerprint, and the status of each path. */
  static final class Section {
    final String fingerprint;
    final List<String> statuses = new ArrayList<>();
    final List<String> paths = new ArrayList<>();

    Section(String fingerprint) {
      this.fingerprint = fingerprint;
    }

    /** Returns true if the status of every path is unchanged. */
    boolean isCurrent(Path root) {
      try {
        for (int i = 0; i < paths.size(); i++) {
          if (!FileStat.of(root.resolve(paths.get(i))).equals(statuses.get(i))) {
            return false;
          }
        }
        return true;
      } catch (IOException | InvalidPathException e) {
        return false;
      }
    }
  }

  /** Returns the status of the program's jar. */
  String program() {
    return program;
  }

  /** Returns the part of the environment that reports depend on. */
  String environment() {
    return environment;
  }

  /** Returns the section of a report, if present. */
  @Nullable Section section(String report) {
    return sections.get(report);
  }

  Map<String, Section> sections() {
    return sections;
  }

  /** Reads the cache of a folder of reports; null if it is missing or invalid. */
  static @Nullable StatCache in(Path reports) {
    try {
      return parsed(RegularFile.lines(reports.resolve(FILE), LARGEST_BYTES));
    } catch (IOException | RuntimeException e) {
      return null;
    }
  }

  private static @Nullable StatCache parsed(List<String> lines) {
    int last = lines.size() - 1;
    if (last < 3 || !lines.get(0).equals(HEAD) || !lines.get(last).equals(END)) {
      return null;
    }
    StatCache cache = new StatCache(lines.get(1), lines.get(2));
    Section section = new Section("");
    for (int i = 3; i < last; i++) {
      String line = lines.get(i);
      int space = line.indexOf(' ');
      if (line.charAt(0) == '>') {
        section = new Section(line.substring(1, space));
        cache.sections.put(line.substring(space + 1), section);
      } else {
        section.statuses.add(line.substring(0, space));
        section.paths.add(line.substring(space + 1));
      }
    }
    return cache;
  }

  /** Replaces the cache file atomically. */
  void write(Path reports, Path scratch) throws IOException {
    StringBuilder text = new StringBuilder();
    text.append(HEAD).append('\n').append(program).append('\n').append(environment).append('\n');
    for (Map.Entry<String, Section> entry : sections.entrySet()) {
      Section section = entry.getValue();
      text.append('>').append(section.fingerprint).append(' ').append(entry.getKey()).append('\n');
      for (int i = 0; i < section.paths.size(); i++) {
        text.append(section.statuses.get(i)).append(' ').append(section.paths.get(i)).append('\n');
      }
    }
    Files.delete(scratch);
    try (OutputStream out = RegularFile.create(scratch)) {
      out.write(text.append(END).append('\n').toString().getBytes(StandardCharsets.UTF_8));
    }
    Files.move(scratch, reports.resolve(FILE), StandardCopyOption.ATOMIC_MOVE);
  }
}
