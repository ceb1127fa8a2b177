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
 * What everything looked like when reports were last found up to date, kept in {@code
 * reports/.looks}. It is a memory and no truth: without it, or with any doubt, files are read.
 */
public final class StatCache {
  /** A look and a path for each of two hundred thousand files. */
  private static final long LARGEST_BYTES = 32L << 20;

  private static final String FILE = ".looks";
  private static final String HEAD = "taperbook looks 1";
  private static final String END = "end";

  /** The section of what a run over all reports looks at beside them: the folders of sessions. */
  static final String FOLDERS = "*";

  private final String program;
  private final String environment;
  private final Map<String, Section> sections = new LinkedHashMap<>();

  /** A book without sections. */
  StatCache(String program, String environment) {
    this.program = program;
    this.environment = environment;
  }

  /** What a report was made from: its fingerprint, and the look of each path. */
  static final class Section {
    final String fingerprint;
    final List<String> looks = new ArrayList<>();
    final List<String> paths = new ArrayList<>();

    Section(String fingerprint) {
      this.fingerprint = fingerprint;
    }

    /** True if everything still looks the same. */
    boolean holds(Path root) {
      try {
        for (int i = 0; i < paths.size(); i++) {
          if (!FileStat.of(root.resolve(paths.get(i))).equals(looks.get(i))) {
            return false;
          }
        }
        return true;
      } catch (IOException | InvalidPathException e) {
        return false;
      }
    }
  }

  /** The look of the program's jar. */
  String program() {
    return program;
  }

  /** What of the environment reports depend on. */
  String environment() {
    return environment;
  }

  /** The section of a report, if there is one. */
  @Nullable Section section(String report) {
    return sections.get(report);
  }

  Map<String, Section> sections() {
    return sections;
  }

  /** The book of a folder of reports; none if there is none, or it is broken. */
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
    StatCache book = new StatCache(lines.get(1), lines.get(2));
    Section section = new Section("");
    for (int i = 3; i < last; i++) {
      String line = lines.get(i);
      int space = line.indexOf(' ');
      if (line.charAt(0) == '>') {
        section = new Section(line.substring(1, space));
        book.sections.put(line.substring(space + 1), section);
      } else {
        section.looks.add(line.substring(0, space));
        section.paths.add(line.substring(space + 1));
      }
    }
    return book;
  }

  /** Puts the book in the place of the last one, whole. */
  void write(Path reports, Path scratch) throws IOException {
    StringBuilder text = new StringBuilder();
    text.append(HEAD).append('\n').append(program).append('\n').append(environment).append('\n');
    for (Map.Entry<String, Section> entry : sections.entrySet()) {
      Section section = entry.getValue();
      text.append('>').append(section.fingerprint).append(' ').append(entry.getKey()).append('\n');
      for (int i = 0; i < section.paths.size(); i++) {
        text.append(section.looks.get(i)).append(' ').append(section.paths.get(i)).append('\n');
      }
    }
    Files.delete(scratch);
    try (OutputStream out = RegularFile.create(scratch)) {
      out.write(text.append(END).append('\n').toString().getBytes(StandardCharsets.UTF_8));
    }
    Files.move(scratch, reports.resolve(FILE), StandardCopyOption.ATOMIC_MOVE);
  }
}
