package taperbook.write.library;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import taperbook.model.InputHash;
import taperbook.model.LeftOut;
import taperbook.model.LibraryPlan;
import taperbook.model.LibraryResult;
import taperbook.model.LibraryRow;
import taperbook.words.Wording;
import taperbook.write.page.Definitions;

/** Everything of a library that a template may print, charts, article and styles excepted. */
public final class LibraryPage {
  private final LibraryResult result;
  private final Wording wording;

  /** The model of one library. */
  public LibraryPage(LibraryResult result) {
    this.result = result;
    this.wording = new Wording(result.plan().style().units());
  }

  /**
   * Plain maps, lists, texts, whole numbers and truth values; the head of {@code library.ftlh}
   * describes them.
   *
   * @param inputs the files that the library was made from
   * @param made the day that it bears as its date
   * @param program name and version of the program
   */
  public Map<String, Object> map(List<InputHash> inputs, LocalDate made, String program) {
    Glance glance = new Glance(result, wording);
    CaveatKinds kinds = new CaveatKinds(result);
    LibraryTable table = new LibraryTable(result, wording, kinds);
    Definitions definitions =
        Definitions.of(result.rows().stream().map(LibraryRow::numbers).toList());
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("report", report(glance, made, program));
    map.put("glance", glance.items());
    map.put("columns", table.columns());
    map.put("parts", table.parts());
    map.put("rows", table.rows());
    map.put("reasons", table.reasons());
    map.put("caveats", kinds.list());
    map.put("leftOut", result.leftOut().stream().map(LibraryPage::leftOut).toList());
    map.put("definitions", definitions.methods());
    map.put("assumptions", definitions.assumptions());
    map.put("inputs", inputs.stream().map(LibraryPage::input).toList());
    return map;
  }

  private Map<String, Object> report(Glance glance, LocalDate made, String program) {
    LibraryPlan plan = result.plan();
    Map<String, Object> report = new LinkedHashMap<>();
    report.put("name", plan.name());
    report.put("title", plan.heading().title());
    report.put("author", plan.heading().author());
    report.put("date", Wording.date(plan.heading().published().orElse(made)));
    report.put("isoDate", plan.heading().published().orElse(made).toString());
    report.put("subject", glance.subject());
    report.put("basis", plan.style().basis().words());
    report.put("program", program);
    return report;
  }

  private static Map<String, Object> leftOut(LeftOut left) {
    return Map.of(
        "name", left.name(),
        "kind", left.kind(),
        "reasons", left.reasons(),
        "more", left.more());
  }

  private static Map<String, Object> input(InputHash input) {
    return Map.of("file", input.path(), "sha256", input.sha256());
  }
}
