package taperbook.read;

import java.util.List;
import taperbook.model.InputFile;
import taperbook.problem.Checked;
import taperbook.problem.ProblemCode;
import taperbook.problem.ProblemLog;
import taperbook.problem.Quoted;

/** Splits a report file into its front matter, between two lines {@code ---}, and its article. */
public final class ReportFileReader {
  private static final String MARK = "---";

  private ReportFileReader() {}

  /** The parts of the file, or every line of the front matter that is not understood. */
  public static Checked<RawReport> read(InputFile file) {
    return Utf8Text.decode(file).then(text -> parse(file.path(), text));
  }

  private static Checked<RawReport> parse(String path, String text) {
    List<String> lines = List.of(text.split("\r\n|\r|\n", -1));
    ProblemLog log = new ProblemLog(path);
    int open = 0;
    while (open < lines.size() && lines.get(open).isBlank()) {
      open++;
    }
    if (open == lines.size() || !isMark(lines.get(open))) {
      String found = open == lines.size() ? "an empty file" : Quoted.of(lines.get(open).strip());
      return broken(log, open == lines.size() ? 0 : open + 1, found, "open");
    }
    FrontMatterLines frontMatter = new FrontMatterLines(log);
    int close = open + 1;
    while (close < lines.size() && !isMark(lines.get(close))) {
      close++;
    }
    if (close == lines.size()) {
      return broken(log, open + 1, "a front matter that never ends", "close");
    }
    for (int i = open + 1; i < close; i++) {
      frontMatter.read(lines.get(i), i + 1);
    }
    if (log.hasErrors()) {
      return Checked.refused(log.list());
    }
    String body = String.join("\n", lines.subList(close + 1, lines.size()));
    return Checked.good(new RawReport(path, open + 1, frontMatter.entries(), body, close + 2));
  }

  private static boolean isMark(String line) {
    return line.stripTrailing().equals(MARK);
  }

  private static Checked<RawReport> broken(ProblemLog log, int line, String found, String verb) {
    log.add(
        ProblemCode.FRONT_MATTER_BROKEN,
        line,
        0,
        found,
        "front matter between two lines of three hyphens (---)",
        "write a line --- to " + verb + " the front matter");
    return Checked.refused(log.list());
  }
}
