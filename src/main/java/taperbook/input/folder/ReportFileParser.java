package taperbook.input.folder;

import java.util.List;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Texts;
import taperbook.input.csv.Utf8Decoder;
import taperbook.session.InputFile;

/** Splits a report file into its front matter, between two lines {@code ---}, and its article. */
public final class ReportFileParser {
  private static final String MARK = "---";

  private ReportFileParser() {}

  /** Returns the parts of the file, or all invalid lines of the front matter. */
  public static Checked<ReportFile> read(InputFile file) {
    return Utf8Decoder.decode(file).then(text -> parse(file.path(), text));
  }

  private static Checked<ReportFile> parse(String path, String text) {
    List<String> lines = List.of(text.split("\r\n|\r|\n", -1));
    ProblemLog log = new ProblemLog(path);
    int open = 0;
    while (open < lines.size() && lines.get(open).isBlank()) {
      open++;
    }
    if (open == lines.size() || !isMark(lines.get(open))) {
      String found =
          open == lines.size()
              ? Texts.of("input.common.empty_file")
              : Quoted.of(lines.get(open).strip());
      return broken(
          log,
          open == lines.size() ? 0 : open + 1,
          found,
          Texts.of("input.report_file_parser.open"));
    }
    FrontMatterParser frontMatter = new FrontMatterParser(log);
    int close = open + 1;
    while (close < lines.size() && !isMark(lines.get(close))) {
      close++;
    }
    if (close == lines.size()) {
      return broken(
          log,
          open + 1,
          Texts.of("input.report_file_parser.front_matter_that_never_ends"),
          Texts.of("input.report_file_parser.close"));
    }
    for (int i = open + 1; i < close; i++) {
      frontMatter.read(lines.get(i), i + 1);
    }
    if (log.hasErrors()) {
      return Checked.refused(log.list());
    }
    String body = String.join("\n", lines.subList(close + 1, lines.size()));
    return Checked.good(new ReportFile(path, open + 1, frontMatter.entries(), body, close + 2));
  }

  private static boolean isMark(String line) {
    return line.stripTrailing().equals(MARK);
  }

  private static Checked<ReportFile> broken(ProblemLog log, int line, String found, String verb) {
    log.add(
        ProblemCode.FRONT_MATTER_BROKEN,
        line,
        0,
        found,
        Texts.of("input.report_file_parser.front_matter_between_two_lines"),
        Texts.of("input.report_file_parser.write_line_to_front_matter", verb));
    return Checked.refused(log.list());
  }
}
