package taperbook.endtoend;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Parses the cases of invalid inputs; the head of the file describes the format. */
final class CorpusFile {
  static final Path FOLDER = Path.of("src/test/resources/corpus");

  private final List<CorpusCase> cases = new ArrayList<>();
  private String kind = "";
  private String title = "";
  private List<String> edits = new ArrayList<>();
  private List<String> problems = new ArrayList<>();

  private CorpusFile() {}

  static List<CorpusCase> cases() {
    try {
      CorpusFile file = new CorpusFile();
      Files.readAllLines(FOLDER.resolve("cases.txt")).forEach(file::take);
      file.end();
      return file.cases;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void take(String line) {
    if (line.startsWith("## ")) {
      end();
      kind = line.substring(3);
    } else if (line.startsWith("- ")) {
      end();
      title = line.substring(2);
    } else if (line.startsWith("  > ")) {
      problems.add(line.substring(4));
    } else if (line.startsWith("  ")) {
      edits.add(line.substring(2));
    }
  }

  private void end() {
    if (!title.isEmpty()) {
      cases.add(new CorpusCase(kind, title, edits, problems));
    }
    title = "";
    edits = new ArrayList<>();
    problems = new ArrayList<>();
  }
}
