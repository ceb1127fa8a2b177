package taperbook.endtoend;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import taperbook.session.InputFile;
import taperbook.workspace.StoppedException;

/**
 * Entry point for a coverage-guided fuzzer, which calls {@link #fuzzerTestOneInput} with the system
 * property {@code fuzz.target} naming a {@link FuzzTarget}. The class does not depend on a fuzzer;
 * the guide for contributors describes how to install and start one.
 */
public final class Fuzzing {
  /** Inputs of past findings, by target; all are fixed and kept as regression tests. */
  static final Path FOUND = Path.of("src/test/resources/fuzz");

  private static final String FORMS =
      """
      # A *b*

      - [c](d "e")
      - ${number("peak_power")}

      | f | g |
      |--|:-:|
      | h | `i` |

      > <b>j</b> &amp; ![k](l)

      It peaked at 142 kW.
      """;

  private static final String NUMBERS =
      """
      {"report":"look","inputs":[{"file":"sessions/stop/readings.csv","sha256":"00"}],"numbers":[
      {"id":"peak_power","label":"Peak power","value":142.0,"unit":"kW","low":141.5,"high":142.5,
      "coverage":0.95,"basis":"driven","session":"stop","rows":["sessions/stop/readings.csv:4",
      "sessions/stop/readings.csv:5-7"],"caveats":["a"],"withheld":null},{"id":"x","label":"X",
      "value":null,"unit":"s","low":null,"high":null,"coverage":null,"basis":"","session":"stop",
      "against":"other","rows":[],"caveats":[],"withheld":"why"}],"checks":[{"id":"c"}]}
      """;

  private static final int LARGEST_SEED_BYTES = 100_000;

  private static final class Target {
    static final FuzzTarget OF_THE_PROCESS =
        FuzzTarget.of(System.getProperty("fuzz.target", "readings"));
  }

  private Fuzzing() {}

  /** Initializes what targets share, as it takes longer than the limit of an input. */
  public static void fuzzerInitialize() {
    FuzzProject.published();
    FuzzProject.measuredWith("");
  }

  /** Processes one input; any exception but the declared one is a finding. */
  public static void fuzzerTestOneInput(byte[] data) {
    try {
      Target.OF_THE_PROCESS.take(data);
    } catch (StoppedException e) {
      // Reported to the user, as intended.
    }
  }

  /**
   * Writes the initial inputs to a folder for each target, in the folder given as the first
   * argument.
   */
  public static void main(String[] arguments) throws IOException {
    for (FuzzTarget target : FuzzTarget.values()) {
      Path folder = Files.createDirectories(Path.of(arguments[0]).resolve(target.word()));
      for (byte[] seed : seeds(target)) {
        Files.write(folder.resolve(new InputFile("seed", seed).sha256().substring(0, 16)), seed);
      }
    }
  }

  /** The valid file, those of the demo, those of the corpus, and past findings. */
  static List<byte[]> seeds(FuzzTarget target) throws IOException {
    List<byte[]> seeds = new ArrayList<>(List.of(valid(target)));
    switch (target) {
      case PDF, NUMBERS, COLUMNS -> {}
      case TEMPLATE -> templates(seeds);
      case ARTICLE, PRINTED -> articles(seeds);
      default -> demo(Path.of(target.file).getFileName(), seeds);
    }
    if (target == FuzzTarget.NUMBERS) {
      seeds.add(NUMBERS.getBytes(StandardCharsets.UTF_8));
    }
    addCorpusCases(target, seeds);
    seeds.removeIf(seed -> seed.length > LARGEST_SEED_BYTES && target != FuzzTarget.PDF);
    seeds.addAll(found(target));
    return seeds;
  }

  /** A valid input. */
  static byte[] valid(FuzzTarget target) {
    return switch (target) {
      case PDF -> FuzzProject.publishedPdf();
      case NUMBERS -> FuzzProject.publishedNumbers();
      case COLUMNS -> FuzzProject.MAP.getBytes(StandardCharsets.UTF_8);
      case FOREIGN -> FuzzProject.LOG.getBytes(StandardCharsets.UTF_8);
      case ARTICLE, PRINTED -> FORMS.getBytes(StandardCharsets.UTF_8);
      case TEMPLATE ->
          "<#list numbers as n>${n.id}<#if n.value gt 3>${n.value * 2}</#if></#list>${title?cap_first}"
              .getBytes(StandardCharsets.UTF_8);
      default -> FuzzProject.valid().bytes(target.file);
    };
  }

  /** Past findings of a target. */
  static List<byte[]> found(FuzzTarget target) throws IOException {
    Path folder = FOUND.resolve(target.word());
    List<byte[]> found = new ArrayList<>();
    if (Files.isDirectory(folder)) {
      try (Stream<Path> all = Files.list(folder)) {
        for (Path file : all.sorted().toList()) {
          found.add(Files.readAllBytes(file));
        }
      }
    }
    return found;
  }

  private static void templates(List<byte[]> seeds) throws IOException {
    try (Stream<Path> all = Files.list(Path.of("templates"))) {
      for (Path file : all.filter(f -> f.toString().endsWith(".ftlh")).sorted().toList()) {
        seeds.add(Files.readAllBytes(file));
      }
    }
    for (String text : FuzzProject.bareTemplates().values()) {
      seeds.add(text.getBytes(StandardCharsets.UTF_8));
    }
  }

  private static void articles(List<byte[]> seeds) throws IOException {
    List<byte[]> reports = new ArrayList<>();
    demo(Path.of("look.md"), reports);
    addCorpusCases(FuzzTarget.FRONT_MATTER, reports);
    for (byte[] report : reports) {
      String text = new String(report, StandardCharsets.UTF_8);
      int end = text.indexOf("\n---\n");
      if (end >= 0) {
        seeds.add(text.substring(end + 5).getBytes(StandardCharsets.UTF_8));
      }
    }
  }

  private static void demo(Path name, List<byte[]> seeds) throws IOException {
    boolean report = name.toString().endsWith(".md");
    try (Stream<Path> all = Files.walk(Path.of(report ? "reports" : "sessions"), 2)) {
      List<Path> files =
          all.filter(f -> report ? f.toString().endsWith(".md") : f.endsWith(name))
              .filter(Files::isRegularFile)
              .sorted()
              .toList();
      for (Path file : files) {
        seeds.add(Files.readAllBytes(file));
      }
    }
  }

  /** The file as each case of the corpus changes it. */
  private static void addCorpusCases(FuzzTarget target, List<byte[]> seeds) throws IOException {
    for (CorpusCase bad : CorpusFile.cases()) {
      Path folder = Files.createTempDirectory(Path.of("target"), "seeds-");
      Path file = folder.resolve(target.file);
      for (String path : FuzzProject.valid().paths()) {
        Path copy = folder.resolve(path);
        Files.createDirectories(copy.resolve(".."));
        Files.write(copy, FuzzProject.valid().bytes(path));
      }
      bad.applyTo(folder);
      if (Files.isRegularFile(file)) {
        seeds.add(Files.readAllBytes(file));
      }
      delete(folder);
    }
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      List<Path> files = new ArrayList<>(all.toList());
      for (int i = files.size() - 1; i >= 0; i--) {
        Files.delete(files.get(i));
      }
    }
  }
}
