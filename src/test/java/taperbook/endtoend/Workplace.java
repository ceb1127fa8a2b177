package taperbook.endtoend;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import taperbook.CommandLine;
import taperbook.cli.ExitStatus;
import taperbook.cli.ProcessContext;
import taperbook.cli.Terminal;
import taperbook.cli.WatchClock;

/** A project folder for runs of the program, with the output of the last run. */
public final class Workplace {
  /** A clock whose stopwatch does not advance, so that a busy machine prints no progress. */
  private static final WatchClock AT_REST =
      new WatchClock() {
        @Override
        public boolean pause(long millis) {
          return false;
        }

        @Override
        public long nanoTime() {
          return 0;
        }

        @Override
        public void runUninterrupted(Runnable work) {
          work.run();
        }
      };

  private final Path folder;
  private Terminal terminal = Terminal.NONE;
  private Map<String, String> environment = Map.of();
  private ByteArrayOutputStream out = new ByteArrayOutputStream();
  private ByteArrayOutputStream err = new ByteArrayOutputStream();

  Workplace(Path folder) {
    this.folder = folder;
  }

  /** A copy of the demo without its output. */
  static Workplace withDemo(Path folder) throws IOException {
    Path base = Path.of("").toAbsolutePath();
    for (String part : List.of("sessions", "reports")) {
      try (Stream<Path> all = Files.walk(base.resolve(part))) {
        List<Path> files =
            all.filter(Files::isRegularFile)
                .filter(p -> part.equals("sessions") || p.toString().endsWith(".md"))
                .toList();
        for (Path file : files) {
          Path copy = folder.resolve(base.relativize(file).toString());
          Files.createDirectories(copy.resolveSibling(""));
          Files.copy(file, copy);
        }
      }
    }
    return new Workplace(folder);
  }

  /** A copy of the demo with its reports, which are built once for all tests. */
  static Workplace withMadeDemo(Path folder) throws IOException {
    copy(Made.FOLDER, folder);
    return new Workplace(folder);
  }

  /** The demo with its reports, which is never changed after the build. */
  private static final class Made {
    private static final Path FOLDER = make();

    private static Path make() {
      try {
        Path folder = Files.createTempDirectory(Path.of("target"), "made-demo-");
        Workplace place = withDemo(folder);
        if (place.run("report") != ExitStatus.DONE) {
          throw new IllegalStateException(place.err());
        }
        return folder;
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** Copies the files of a folder. */
  public static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        Path copy = to.resolve(from.relativize(file).toString());
        Files.createDirectories(copy.resolveSibling(""));
        Files.copy(file, copy);
      }
    }
  }

  /** Simulates a terminal with the given number of columns. */
  Workplace onTerminal(int columns, Map<String, String> variables) {
    terminal = new Terminal(true, true, columns);
    environment = variables;
    return this;
  }

  public ExitStatus run(String... arguments) {
    return run(AT_REST, arguments);
  }

  ExitStatus run(WatchClock clock, String... arguments) {
    out = new ByteArrayOutputStream();
    err = new ByteArrayOutputStream();
    List<String> all = new ArrayList<>(List.of(arguments));
    all.add("--folder");
    all.add(folder.toString());
    return new CommandLine(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            new ProcessContext(environment, terminal, clock))
        .run(all);
  }

  public String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  public String err() {
    return err.toString(StandardCharsets.UTF_8);
  }

  public Path path(String relative) {
    return folder.resolve(relative);
  }

  public String text(String relative) {
    try {
      return Files.readString(path(relative));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public void replace(String relative, String old, String fresh) throws IOException {
    String text = text(relative);
    if (!text.contains(old)) {
      throw new IllegalArgumentException(relative + " does not hold " + old);
    }
    Files.writeString(path(relative), text.replace(old, fresh));
  }

  /** The files below a folder by path, with one character for each byte. */
  public SortedMap<String, String> files(String relative) throws IOException {
    SortedMap<String, String> found = new TreeMap<>();
    try (Stream<Path> all = Files.walk(path(relative))) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        found.put(
            path(relative).relativize(file).toString(),
            new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
      }
    }
    return found;
  }
}
