package taperbook.output.view;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.plan.ReportPlan;
import taperbook.result.Contribution;
import taperbook.result.Correction;
import taperbook.result.Numbers;
import taperbook.result.Outcome;
import taperbook.result.PairResult;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.Role;
import taperbook.result.SessionResult;
import taperbook.session.Caveat;
import taperbook.session.ConditionItem;
import taperbook.session.InputFile;

/** The template model of a report without charts, article and styles. */
public final class PageModel {
  private final ReportResult result;
  private final NumberFormatter formatter;
  private final NumberViews views;
  private final CaveatMarks marks;

  /** Creates the model of one report. */
  public PageModel(ReportResult result) {
    this.result = result;
    this.formatter = new NumberFormatter(result.plan().style());
    this.marks = new CaveatMarks(result);
    this.views = new NumberViews(result, formatter, marks);
  }

  /**
   * Returns plain maps, lists, strings and booleans; the head of {@code report.ftlh} describes
   * them.
   *
   * @param inputs the input files of the report
   * @param corrections corrections since publication
   * @param date date of the report
   * @param program name and version of the program
   */
  public Map<String, Object> map(
      List<InputFile> inputs, List<Correction> corrections, LocalDate date, String program) {
    Tables tables = new Tables(result, views, formatter);
    MethodsPart methods = new MethodsPart(result, formatter);
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("report", report(date, program));
    map.put("headline", headline().stream().map(n -> HeadlineFormat.cell(views, n)).toList());
    map.put("first", new FirstPage(result, views, formatter).map());
    map.put("budgets", Budgets.of(headline()));
    map.put("intervals", methods.intervals());
    map.put("milestones", tables.milestones());
    EventTables events = new EventTables(result, views, formatter);
    map.put("events", events.events());
    map.put("interrupted", events.interrupted());
    map.put("othersEvents", events.ofOthers());
    map.put("distances", tables.distances());
    map.put("stops", tables.stops());
    map.put("speeds", tables.speeds());
    map.put("door", tables.door());
    map.put("segments", new CurvePart(result.main(), views).segments());
    map.put("curve", views.measured(result.main(), Role.CURVE));
    map.put("energy", views.measured(result.main(), Role.ENERGY));
    map.put("laterStops", views.views(result.main(), Role.STOPS));
    map.put("season", views.views(result.main(), Role.SEASON));
    map.put(
        "seasonNotes",
        result.main().numbers().with(Role.SEASON).stream()
            .flatMap(n -> n.caveats().stream())
            .map(Caveat::sentence)
            .distinct()
            .toList());
    map.put("range", new RangeBasis(result.main(), views, formatter).map());
    map.put("checks", tables.checks());
    map.put("comparison", new ComparisonPart(result, views, formatter).map());
    map.put("repeats", new RepeatsPart(result, views, formatter).map());
    map.put("corrections", correctionsPart().of(corrections));
    map.put("road", new RoadPart(result, views, formatter).map());
    map.put("withheld", methods.withheld());
    map.put("definitions", methods.definitions());
    map.put("assumptions", methods.assumptions());
    map.put("displays", methods.displays());
    map.put("conditions", FactTexts.table(result.main().session().conditions()));
    map.put("caveats", marks.byTopic());
    map.put("day", SessionConditions.of(result.main().session(), formatter));
    map.put("began", views.view(result.main(), "start_soc"));
    map.put("numbers", numbers(new FileKeys(inputs)));
    map.put("inputs", FileKeys.list(inputs));
    return map;
  }

  private Map<String, Object> report(LocalDate date, String program) {
    ReportPlan plan = result.plan();
    Map<String, Object> report = new LinkedHashMap<>();
    report.put("name", plan.name());
    report.put("title", plan.heading().title());
    report.put("author", plan.heading().author());
    report.put("date", NumberFormatter.date(plan.heading().published().orElse(date)));
    report.put("isoDate", plan.heading().published().orElse(date).toString());
    report.put("subject", FactTexts.subject(result.main().session()));
    report.put("session", result.main().session().name());
    report.put("basis", plan.style().basis().words());
    report.put("program", program);
    report.put("vehicle", stated(ConditionItem.VEHICLE));
    report.put("place", stated(ConditionItem.PLACE));
    report.put("sessionDate", stated(ConditionItem.DATE));
    report.put(
        "zero",
        result.main().session().countsFromPluggingIn()
            ? Texts.of("label.plugging_in")
            : Texts.of("label.first_row"));
    return report;
  }

  private CorrectionsPart correctionsPart() {
    return new CorrectionsPart(
        result.main().session().name(),
        headline().stream().map(ReportNumber::id).toList(),
        formatter);
  }

  private String stated(ConditionItem item) {
    return result.main().session().conditions().known(item).map(FactTexts::value).orElse("\u2013");
  }

  private List<ReportNumber> headline() {
    return result.main().numbers().headline();
  }

  private List<Map<String, Object>> numbers(FileKeys keys) {
    List<Map<String, Object>> all = new ArrayList<>();
    for (SessionResult session : result.sessions()) {
      all.add(numbers(session.session().name(), session.numbers(), keys));
    }
    for (PairResult pair : result.pairs()) {
      String name =
          Texts.of("page.page_model.against", result.main().session().name(), pair.other());
      all.add(numbers(name, pair.numbers(), keys));
    }
    return all;
  }

  private Map<String, Object> numbers(String session, Numbers numbers, FileKeys keys) {
    return Map.of(
        "session",
        session,
        "numbers",
        numbers.all().stream().map(views::view).toList(),
        "groups",
        NumberGroups.of(numbers.all(), views, keys));
  }

  /** The uncertainty budgets of the headline numbers, and how to reduce them. */
  private static final class Budgets {
    private static final int MOST_SOURCES = 3;

    private Budgets() {}

    /** Returns one entry per number that has a budget: its largest sources and the best advice. */
    static List<Map<String, Object>> of(List<ReportNumber> numbers) {
      List<Map<String, Object>> budgets = new ArrayList<>();
      for (ReportNumber number : numbers) {
        List<Contribution> largest =
            number.outcome().fold(Outcome.Measured::budget, w -> List.<Contribution>of()).stream()
                .filter(c -> c.share() > 0)
                .limit(MOST_SOURCES)
                .toList();
        if (!largest.isEmpty()) {
          budgets.add(
              Map.of(
                  "label", number.label(),
                  "sources", largest.stream().map(Budgets::source).toList(),
                  "advice", largest.get(0).source().advice()));
        }
      }
      return budgets;
    }

    private static Map<String, Object> source(Contribution contribution) {
      return Map.of(
          "words",
          contribution.source().words(),
          "share",
          contribution.share() < 0.005
              ? Texts.of("page.page_model.under_1")
              : NumberViews.share(contribution.share()));
    }
  }

  /** Groups the numbers of a session by method, for a table that states it once. */
  private static final class NumberGroups {
    private NumberGroups() {}

    /**
     * Returns groups in the order of their first numbers: {@code method}, {@code basis} and {@code
     * numbers}, each number with its rows as additional {@code places}. Omits withheld numbers,
     * which have no rows; the report lists them with their reasons.
     */
    static List<Map<String, Object>> of(List<ReportNumber> all, NumberViews views, FileKeys keys) {
      Map<String, List<Map<String, Object>>> groups = new LinkedHashMap<>();
      Map<String, Map<String, Object>> heads = new LinkedHashMap<>();
      for (ReportNumber number : all) {
        if (number.estimate().isEmpty()) {
          continue;
        }
        Map<String, Object> view = views.view(number);
        view.put("places", keys.places(number.origin().rows()));
        String head = view.get("method") + "\n" + view.get("basis");
        groups.computeIfAbsent(head, h -> new ArrayList<>()).add(view);
        heads.putIfAbsent(head, view);
      }
      List<Map<String, Object>> list = new ArrayList<>();
      groups.forEach(
          (head, numbers) -> list.add(group(heads.getOrDefault(head, Map.of()), numbers)));
      return list;
    }

    private static Map<String, Object> group(
        Map<String, Object> first, List<Map<String, Object>> numbers) {
      return Map.of(
          "method", first.getOrDefault("method", ""),
          "basis", first.getOrDefault("basis", ""),
          "numbers", numbers);
    }
  }
}
