package taperbook.output.library;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import taperbook.format.NumberFormatter;
import taperbook.format.RowNames;
import taperbook.i18n.Texts;
import taperbook.output.view.Definitions;
import taperbook.plan.LibraryPlan;
import taperbook.plan.Trip;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.LeftOut;
import taperbook.result.LibraryResult;
import taperbook.result.LibraryRow;
import taperbook.session.InputHash;

/** The template model of a library without charts, article and styles. */
public final class LibraryPage {
  /** Maximum number of listed excluded folders, and of listed files of a large library. */
  private static final int MOST_LISTED = 200;

  private final LibraryResult result;
  private final NumberFormatter formatter;

  /** Creates the model of one library. */
  public LibraryPage(LibraryResult result) {
    this.result = result;
    this.formatter = new NumberFormatter(result.plan().style());
  }

  /**
   * Returns plain maps, lists, strings, integers and booleans; the head of {@code library.ftlh}
   * describes them.
   *
   * @param paper whether it is for the PDF, where a large library shows less
   * @param inputs the input files of the library
   * @param date date of the library
   * @param program name and version of the program
   */
  public Map<String, Object> map(
      boolean paper, List<InputHash> inputs, LocalDate date, String program) {
    RowNames names = RowNames.of(result.rows());
    LibrarySummary summary = new LibrarySummary(result, formatter, names);
    CaveatKinds kinds = new CaveatKinds(result, names);
    List<LibraryRow> shown = paper ? result.inDetail() : result.shown();
    LibraryTable table = new LibraryTable(result, shown, formatter, kinds, names);
    Definitions definitions = Definitions.of(result.numbers());
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("report", report(summary, date, program));
    map.put("glance", summary.items());
    map.put("columns", table.columns());
    map.put("parts", table.parts());
    map.put("rows", table.rows());
    RankingTables ranking = new RankingTables(formatter);
    map.put("ranking", ranking.rows(result.byWindow()));
    map.put("days", ranking.rows(result.byDay()));
    map.put("repeatability", ranking.repeatability(result.byWindow()));
    map.put("dayRepeatability", ranking.repeatability(result.byDay()));
    map.put("day", day());
    map.put(
        "window",
        Texts.of("page.common.to", result.plan().window().from(), result.plan().window().to()));
    map.put("sessions", result.rows().size());
    map.put("inDetail", Math.min(result.rows().size(), LibraryResult.MAX_IN_DETAIL));
    map.put("large", result.isLarge());
    VehicleTable vehicles = new VehicleTable(result, formatter);
    map.put("vehicleHeads", vehicles.heads(table.columns()));
    map.put("vehicles", result.isLarge() ? vehicles.rows() : List.of());
    map.put("reasons", table.reasons());
    map.put("otherReasons", table.otherReasons());
    map.put("caveats", kinds.list());
    map.put(
        "leftOut", result.leftOut().stream().limit(MOST_LISTED).map(LibraryPage::leftOut).toList());
    map.put("allLeftOut", result.leftOut().size());
    map.put("unusedDrives", result.unusedDrives());
    map.put("definitions", definitions.methods());
    map.put("assumptions", definitions.assumptions());
    map.put("inputs", listed(inputs).stream().map(LibraryPage::input).toList());
    map.put("allInputs", inputs.size());
    return map;
  }

  /** Describes the day's drive by which all cars are ranked. */
  private String day() {
    Trip day = Trip.day(result.plan().style().units());
    return Texts.of(
        "page.library_page.at_station_every_for_each",
        day.distance().words().replace(' ', '\u00a0'),
        formatter.exactly(day.kilometresPerHour().orElseThrow(), Unit.KILOMETRE_PER_HOUR),
        day.spacing().words().replace(' ', '\u00a0'),
        formatter.value(Estimate.exactly(day.secondsPerStop()), Unit.SECOND),
        day.startSoc(),
        day.reserveSoc());
  }

  /**
   * Returns the files to list: a large library omits session files, which {@code numbers.json} has.
   */
  private List<InputHash> listed(List<InputHash> inputs) {
    return result.isLarge()
        ? inputs.stream()
            .filter(i -> !i.path().matches("sessions/[^/]+/(readings|conditions|columns)\\.csv"))
            .limit(MOST_LISTED)
            .toList()
        : inputs;
  }

  private Map<String, Object> report(LibrarySummary summary, LocalDate date, String program) {
    LibraryPlan plan = result.plan();
    Map<String, Object> report = new LinkedHashMap<>();
    report.put("name", plan.name());
    report.put("title", plan.heading().title());
    report.put("author", plan.heading().author());
    report.put("date", NumberFormatter.date(plan.heading().published().orElse(date)));
    report.put("isoDate", plan.heading().published().orElse(date).toString());
    report.put("subject", summary.subject());
    report.put("basis", plan.style().basis().words());
    report.put("program", program);
    return report;
  }

  /** Returns the number of its sessions in words. */
  public static String sessions(LibraryResult result) {
    return Texts.count(result.rows().size(), "count.session", "count.sessions");
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
