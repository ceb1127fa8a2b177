package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.cli.ExitStatus;

/**
 * With any entries in a small project, {@code report} exits with done or refused, and files outside
 * are neither read nor changed. Pass {@code -Dhostile=2000} for more.
 */
@Tag("slow")
final class HostileFolderTest {
  private static final int SEEDS = Integer.getInteger("hostile", 200);
  private static final int MOST_ENTRIES = 4;
  private static final int DEEP = 60;

  /** Paths where an entry of another kind may be. */
  private static final List<String> PLACES =
      List.of(
          "reports",
          "reports/look",
          "reports/look/.made",
          "reports/look/report.html",
          "reports/look/data",
          "reports/look/corrections.csv",
          "reports/look/published",
          "reports/look/published/report-2026-01-01.pdf",
          "reports/look/photo.jpg",
          "reports/look/own/photo.jpg",
          "reports/.look.lock",
          "reports/.look.new-version",
          "reports/.look.old-version",
          "reports/.look.old-version/own",
          "reports/.looks",
          "reports/.all.rows",
          "reports/.all.rows.new-rows",
          "reports/look.md",
          "sessions",
          "sessions/stop",
          "sessions/stop/readings.csv",
          "sessions/stop/columns.csv",
          "sessions/drive/legs.csv",
          "sessions/x",
          "templates",
          "templates/report.ftlh",
          "templates/print.css");

  private static final List<String> NAMES =
      List.of(
          "con",
          "NUL.x",
          "com1",
          "STOP",
          "Stop",
          "a b",
          "x.",
          "\u001b[2J",
          "a\nb",
          "\u202egpj",
          "e\u0301",
          "\u00e9",
          "-x",
          "--folder",
          "${x}",
          "<b>",
          "%s",
          "'",
          "~");

  @TempDir private Path temporary = Path.of("");
  private Path folder = Path.of("");
  private Path outside = Path.of("");

  static List<Long> seeds() {
    return LongStream.rangeClosed(1, SEEDS).boxed().toList();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  @Timeout(value = 60, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
  void nothing_outside_a_hostile_folder_is_read_or_changed(long seed) throws IOException {
    folder = temporary.resolve("project");
    outside = Files.createDirectories(temporary.resolve("outside"));
    Random random = random(seed);
    List<Canary> canaries = new ArrayList<>();
    for (String name : List.of("secret", "readings.csv", "report-2026-01-01.pdf")) {
      canaries.add(Canary.in(outside, name, "elapsed [s],soc [%]\n"));
    }
    List<String> what = make(folder, outside, random);
    Workplace place = new Workplace(folder);
    String which = "seed " + seed + ": " + what;
    ExitStatus status = place.run("report");
    String output = which + "\n" + place.out() + place.err();
    assertThat(status).as(output).isIn(ExitStatus.DONE, ExitStatus.INPUT_REFUSED);
    assertThat(place.out() + place.err())
        .as(output)
        .doesNotContainPattern("[\\p{Cntrl}&&[^\n]]|\\p{Cf}")
        .doesNotContain("Exception");
    for (Canary canary : canaries) {
      canary.assertUnchanged(which);
      canary.assertUnread(place, which);
    }
    try (Stream<Path> all = Files.list(outside)) {
      assertThat(all).as(which).hasSize(canaries.size());
    }
  }

  /**
   * Creates hostile folders for runs of the launcher. Arguments: first seed, last seed, and a
   * folder.
   */
  public static void main(String[] arguments) throws IOException {
    for (long seed = Long.parseLong(arguments[0]); seed <= Long.parseLong(arguments[1]); seed++) {
      Path base = Path.of(arguments[2]).resolve("seed" + seed);
      Path outside = Files.createDirectories(base.resolve("outside"));
      for (String name : List.of("secret", "readings.csv", "report-2026-01-01.pdf")) {
        Canary.in(outside, name, "elapsed [s],soc [%]\n");
      }
      List<String> what = make(base.resolve("project"), outside, random(seed));
      System.out.println(seed + " " + what);
    }
  }

  /** First values of adjacent seeds are similar, so that seeds are scattered. */
  private static Random random(long seed) {
    return new Random(seed * 0x9e3779b97f4a7c15L);
  }

  /**
   * Copies the valid folder and adds hostile entries; returns a description for failure messages.
   */
  private static List<String> make(Path folder, Path outside, Random random) throws IOException {
    Workplace.copy(CorpusFile.FOLDER.resolve("valid"), folder);
    // PDF output takes most of a run, and most seeds do not need it: an invalid article stops the
    // run earlier.
    List<String> done = new ArrayList<>();
    if (random.nextInt(8) > 0) {
      Path article = folder.resolve("reports/look.md");
      Files.writeString(article, Files.readString(article) + "\n${number(\"none\")}\n");
      done.add("an article that is refused");
    }
    int entries = 1 + random.nextInt(MOST_ENTRIES);
    for (int i = 0; i < entries; i++) {
      done.add(addHostileEntry(folder, outside, random));
    }
    return done;
  }

  private static String addHostileEntry(Path folder, Path outside, Random random)
      throws IOException {
    String name =
        random.nextInt(4) == 0
            ? List.of("sessions/", "reports/", "reports/look/").get(random.nextInt(3))
                + NAMES.get(random.nextInt(NAMES.size()))
                + (random.nextBoolean() ? ".md" : "")
            : PLACES.get(random.nextInt(PLACES.size()));
    int kind = random.nextInt(8);
    Path place = folder.resolve(name);
    for (int slash = name.indexOf('/'); slash >= 0; slash = name.indexOf('/', slash + 1)) {
      Path parent = folder.resolve(name.substring(0, slash));
      if (!Files.exists(parent, LinkOption.NOFOLLOW_LINKS)) {
        Files.createDirectory(parent);
      } else if (!Files.isDirectory(parent, LinkOption.NOFOLLOW_LINKS)) {
        return name + " has no place";
      }
    }
    if (Files.isDirectory(place) && !Files.isSymbolicLink(place)) {
      Files.move(place, folder.resolve("moved" + random.nextInt(1_000_000)));
    } else {
      Files.deleteIfExists(place);
    }
    List<String> secrets = List.of("secret", "readings.csv", "report-2026-01-01.pdf");
    Path secret = outside.resolve(secrets.get(random.nextInt(secrets.size())));
    switch (kind) {
      case 0 -> Files.createSymbolicLink(place, secret);
      case 1 -> Files.createSymbolicLink(place, outside);
      case 2 -> Canary.pipe(place);
      case 3 -> Files.createSymbolicLink(place, Path.of("/dev/zero"));
      case 4 -> Files.createSymbolicLink(place, outside.resolve("nowhere"));
      case 5 -> {
        try (RandomAccessFile sparse = new RandomAccessFile(place.toFile(), "rw")) {
          sparse.setLength((64L << 20) + (random.nextLong() & 0x3_ffff_ffffL));
        }
      }
      case 6 -> Files.createDirectories(place.resolve("d/".repeat(DEEP)));
      default -> {
        // As an input it would be a finding; elsewhere it must not be opened.
        if (name.startsWith("reports/.") || name.contains("photo") || name.endsWith(".made")) {
          Files.createLink(place, secret);
        } else {
          Files.createSymbolicLink(place, place);
        }
      }
    }
    return name + " of kind " + kind;
  }
}
