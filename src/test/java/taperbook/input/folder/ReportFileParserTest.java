package taperbook.input.folder;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.session.InputFile;

final class ReportFileParserTest {
  @Test
  void entries_keep_their_locations_and_the_body_its_first_line() {
    ReportFile report =
        report(
            "---\ntitle: First look: the Finch\n# a remark\n\n  author:   \n---\n\nHello\nall\n");
    assertThat(report.firstLine()).isEqualTo(1);
    assertThat(report.entries())
        .containsExactly(
            new FrontMatterEntry(
                "title", 2, 1, List.of(new FrontMatterValue("First look: the Finch", 2, 8))),
            new FrontMatterEntry("author", 5, 3, List.of()));
    assertThat(report.body()).isEqualTo("\nHello\nall\n");
    assertThat(report.bodyFirstLine()).isEqualTo(7);
  }

  @Test
  void lists_follow_their_key() {
    ReportFile report = report("---\ncompare:\n  - one\n# two\n- 'three'\n---");
    assertThat(report.entries())
        .containsExactly(
            new FrontMatterEntry(
                "compare",
                2,
                1,
                List.of(new FrontMatterValue("one", 3, 5), new FrontMatterValue("three", 5, 4))));
    assertThat(report.body()).isEmpty();
  }

  @Test
  void quotes_around_a_value_are_removed() {
    ReportFile report = report("---\na: \" x: y \"\nb: 'it''s'\nc: \"\"\nd: \"open\ne: \"\n---\n");
    assertThat(report.entries().stream().map(FrontMatterEntry::values))
        .containsExactly(
            List.of(new FrontMatterValue("x: y", 2, 5)),
            List.of(new FrontMatterValue("it''s", 3, 5)),
            List.of(),
            List.of(new FrontMatterValue("\"open", 5, 4)),
            List.of(new FrontMatterValue("\"", 6, 4)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void every_line_ending_is_accepted(String end) {
    ReportFile report = report("\ufeff\n---  \ntitle: T\n---\na\nb".replace("\n", end));
    assertThat(report.firstLine()).isEqualTo(2);
    assertThat(report.entries().get(0).line()).isEqualTo(3);
    assertThat(report.body()).isEqualTo("a\nb");
    assertThat(report.bodyFirstLine()).isEqualTo(5);
  }

  @Test
  void later_delimiters_are_part_of_the_article() {
    assertThat(report("---\na: b\n---\nx\n---\ny").body()).isEqualTo("x\n---\ny");
  }

  @Test
  void a_file_without_opening_delimiter_is_refused() {
    assertThat(problems("\ntitle: T\n"))
        .containsExactly(
            "r.md:2: found \"title: T\"; expected front matter between two lines of three hyphens"
                + " (---). To fix: write a line --- to open the front matter."
                + " [front-matter-broken]");
    assertThat(problems(" \n"))
        .containsExactly(
            "r.md: found an empty file; expected front matter between two lines of three hyphens"
                + " (---). To fix: write a line --- to open the front matter."
                + " [front-matter-broken]");
  }

  @Test
  void a_file_without_closing_delimiter_is_refused() {
    assertThat(problems("---\ntitle: T\n"))
        .containsExactly(
            "r.md:1: found a front matter that never ends; expected front matter between two lines"
                + " of three hyphens (---). To fix: write a line --- to close the front matter."
                + " [front-matter-broken]");
  }

  @Test
  void every_invalid_line_is_reported() {
    assertThat(problems("---\n- one\ntitle T\nunits: mi\n  - km\n: x\n---\n"))
        .containsExactly(
            "r.md:2:1: found \"- one\"; expected a list item below a key that has nothing behind"
                + " its colon. To fix: write the list below its key, or behind the colon with"
                + " commas. [front-matter-broken]",
            "r.md:3:1: found \"title T\"; expected a key, a colon and a value, as in title: A first"
                + " look. To fix: write the key and a colon before the value."
                + " [front-matter-broken]",
            "r.md:5:3: found \"- km\"; expected a list item below a key that has nothing behind its"
                + " colon. To fix: write the list below its key, or behind the colon with commas."
                + " [front-matter-broken]",
            "r.md:6:1: found \": x\"; expected a key, a colon and a value, as in title: A first"
                + " look. To fix: write the key and a colon before the value."
                + " [front-matter-broken]");
  }

  @Test
  void invalid_utf8_is_refused() {
    byte[] latin = "---\ntitle: \u00e9\n---\n".getBytes(StandardCharsets.ISO_8859_1);
    assertThat(ReportFileParser.read(new InputFile("r.md", latin)).problems().get(0).sentence())
        .startsWith("r.md:2: found the byte 0xe9; expected text in UTF-8.");
  }

  private static ReportFile report(String text) {
    return read(text).value().orElseThrow();
  }

  private static List<String> problems(String text) {
    assertThat(read(text).isUsable()).isFalse();
    return read(text).problems().stream().map(Problem::sentence).toList();
  }

  private static Checked<ReportFile> read(String text) {
    return ReportFileParser.read(new InputFile("r.md", text.getBytes(StandardCharsets.UTF_8)));
  }
}
