package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Follows the tutorial: runs its commands, applies its edits, and compares the output. */
@Tag("slow")
final class TutorialTest {
  private static final Path TUTORIAL = Path.of("src/docs/tutorial.md");
  private static final String COPY = "<!-- copy sessions -->";
  private static final String INDENT = "    ";
  private static final String COMMAND = "$ taperbook ";
  private static final String LEFT_OUT = "\u2026";

  @TempDir private Path folder = Path.of("");

  @Test
  void the_tutorial_works_as_written() throws IOException {
    Workplace place = new Workplace(folder);
    int commands = 0;
    for (List<String> block : blocks()) {
      String first = block.get(0);
      List<String> rest = block.subList(1, block.size());
      if (first.equals(COPY)) {
        copySessions();
      } else if (first.startsWith(COMMAND)) {
        place.run(arguments(first.substring(COMMAND.length())));
        answers(place.out() + place.err(), rest, first);
        commands++;
      } else if (rest.get(0).startsWith("- ")) {
        edit(folder.resolve(first), rest);
      } else if (rest.contains(LEFT_OUT)) {
        answers(Files.readString(folder.resolve(first)), rest, first);
      } else {
        Files.writeString(folder.resolve(first), String.join("\n", rest) + "\n");
      }
    }
    assertThat(commands).isEqualTo(11);
  }

  /** The arguments after the program's name; the path of a PDF is relative to the project. */
  private String[] arguments(String typed) {
    return Stream.of(typed.split(" ", -1))
        .map(a -> a.endsWith(".pdf") ? folder.resolve(a).toString() : a)
        .toArray(String[]::new);
  }

  /** The indented blocks of the tutorial, and the position where files are copied. */
  private static List<List<String>> blocks() throws IOException {
    List<List<String>> blocks = new ArrayList<>();
    boolean inside = false;
    for (String line : Files.readAllLines(TUTORIAL)) {
      boolean indented = line.startsWith(INDENT);
      if (line.equals(COPY) || (indented && !inside)) {
        blocks.add(new ArrayList<>());
      }
      if (line.equals(COPY) || indented) {
        blocks.get(blocks.size() - 1).add(indented ? line.substring(INDENT.length()) : line);
      }
      inside = indented;
    }
    return blocks;
  }

  /**
   * Asserts that the lines occur in this order, with other lines between only where that is marked.
   */
  private static void answers(String text, List<String> lines, String what) {
    List<String> printed = text.lines().toList();
    int at = 0;
    boolean skipping = false;
    for (String line : lines) {
      if (line.equals(LEFT_OUT)) {
        skipping = true;
        continue;
      }
      int found = printed.subList(Math.min(at, printed.size()), printed.size()).indexOf(line);
      assertThat(found).as("%s: \u201c%s\u201d in%n%s", what, line, text).isNotNegative();
      assertThat(skipping || found == 0).as("%s: lines left out before %s", what, line).isTrue();
      at += found + 1;
      skipping = false;
    }
  }

  /** Replaces lines with a minus by those with a plus. */
  private static void edit(Path file, List<String> lines) throws IOException {
    String before = marked(lines, "- ");
    String text = Files.readString(file);
    assertThat(text).contains(before);
    Files.writeString(file, text.replace(before, marked(lines, "+ ")));
  }

  private static String marked(List<String> lines, String mark) {
    StringBuilder text = new StringBuilder();
    for (String line : lines) {
      if (line.startsWith(mark)) {
        text.append(line.substring(mark.length())).append('\n');
      }
    }
    return text.toString();
  }

  private void copySessions() throws IOException {
    for (String name : List.of("finch-quarry-lane", "finch-ring-road")) {
      Path to = folder.resolve("sessions").resolve(name);
      try (Stream<Path> files = Files.list(Path.of("sessions", name))) {
        for (Path file : files.toList()) {
          Files.copy(
              file,
              to.resolve(String.valueOf(file.getFileName())),
              java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        }
      }
    }
  }
}
