package taperbook.output.view;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import taperbook.session.Session;

/** The template model of a report without charts, article and styles. */
public final class PageModel {
  private static final int MOST_SOURCES = 3;

  private final ReportResult result;
  private final List<InputFile> inputs;
  private final NumberViews views;
  private final Tables tables;
  private final Report report;
  private final FirstPage.First first;
  private final List<CorrectionsPart.Entry> corrections;

  /**
   * The heading of a report and what it is about.
   *
   * @param author may be empty
   * @param zero what elapsed times are counted from
   */
  public record Report(
      String name,
      String title,
      String author,
      String date,
      String isoDate,
      String subject,
      String session,
      String basis,
      String program,
      String vehicle,
      String place,
      String sessionDate,
      String zero) {}

  /** The numbers of a session or of two against each other; groups leave out withheld ones. */
  record NumberList(String session, List<NumberView> numbers, List<Group> groups) {}

  /** Measured numbers of one method and basis. */
  record Group(String method, String basis, List<Placed> numbers) {}

  /** A number with its rows of input. */
  record Placed(@Unwrapped NumberView number, List<FileKeys.Place> places) {}

  /** The largest sources of a number's uncertainty, and how to reduce it. */
  record Budget(String label, List<Source> sources, String advice) {}

  /** A source of uncertainty with its share. */
  record Source(String words, String share) {}

  /**
   * Creates the model of one report.
   *
   * @param inputs the input files of the report
   * @param corrections corrections since publication
   * @param date date of the report
   * @param program name and version of the program
   */
  public PageModel(
      ReportResult result,
      List<InputFile> inputs,
      List<Correction> corrections,
      LocalDate date,
      String program) {
    this.result = result;
    this.inputs = List.copyOf(inputs);
    this.views = new NumberViews(result);
    this.tables = new Tables(views);
    this.report = report(date, program);
    this.first = new FirstPage(views).view();
    this.corrections =
        new CorrectionsPart(
                result.main().session().name(),
                headline().stream().map(ReportNumber::id).toList(),
                views.formatter())
            .of(corrections);
  }

  /** Returns the heading of the report. */
  public Report report() {
    return report;
  }

  /** Returns the contents of the first page. */
  public FirstPage.First first() {
    return first;
  }

  /** Returns the table by state of charge. */
  public NumberTable<NumberTable.RowView> milestones() {
    return tables.milestones();
  }

  /** Returns the date of the latest correction, if there was one. */
  public Optional<String> corrected() {
    return corrections.stream().map(CorrectionsPart.Entry::date).findFirst();
  }

  /** Returns records, lists, texts and booleans; the head of {@code report.ftlh} describes them. */
  public Map<String, Object> map() {
    MethodsPart methods = new MethodsPart(result, views.formatter());
    Definitions definitions =
        Definitions.of(result.sessions().stream().map(SessionResult::numbers).toList());
    FileKeys keys = new FileKeys(inputs);
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("report", report);
    map.put("headline", headline().stream().map(views::headline).toList());
    map.put("first", first);
    map.put("budgets", budgets());
    map.put("intervals", methods.intervals());
    map.put("milestones", tables.milestones());
    EventTables events = new EventTables(views);
    map.put("events", events.events());
    map.put("interrupted", events.interrupted());
    map.put("othersEvents", events.ofOthers());
    map.put("distances", tables.distances());
    map.put("stops", tables.stops());
    map.put("speeds", tables.speeds());
    map.put("door", tables.door());
    map.put("segments", tables.segments());
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
    map.put("range", new RangeBasis(views).view());
    map.put("checks", tables.checks());
    map.put("comparison", new ComparisonPart(views).view());
    map.put("repeats", new RepeatsPart(views).view());
    map.put("corrections", corrections);
    map.put("road", new RoadPart(views).view());
    map.put("withheld", methods.withheld());
    map.put("definitions", definitions.methods());
    map.put("assumptions", definitions.assumptions());
    map.put("displays", methods.displays());
    map.put("conditions", FactTexts.table(result.main().session().conditions()));
    map.put("caveats", views.marks().byTopic());
    map.put("day", SessionConditions.of(result.main().session(), views.formatter()));
    map.put("began", views.view(result.main(), "start_soc"));
    map.put("numbers", numbers(keys));
    map.put("inputs", keys.list(inputs));
    return map;
  }

  private Report report(LocalDate date, String program) {
    ReportPlan plan = result.plan();
    Session session = result.main().session();
    LocalDate published = plan.heading().published().orElse(date);
    return new Report(
        plan.name(),
        plan.heading().title(),
        plan.heading().author(),
        NumberFormatter.date(published),
        published.toString(),
        FactTexts.subject(session),
        session.name(),
        plan.style().basis().words(),
        program,
        stated(ConditionItem.VEHICLE),
        stated(ConditionItem.PLACE),
        stated(ConditionItem.DATE),
        Texts.of(session.countsFromPluggingIn() ? "label.plugging_in" : "label.first_row"));
  }

  private String stated(ConditionItem item) {
    return result.main().session().conditions().known(item).map(FactTexts::value).orElse("\u2013");
  }

  private List<ReportNumber> headline() {
    return result.main().numbers().headline();
  }

  private List<NumberList> numbers(FileKeys keys) {
    List<NumberList> all = new ArrayList<>();
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

  private NumberList numbers(String session, Numbers numbers, FileKeys keys) {
    return new NumberList(
        session, numbers.all().stream().map(views::view).toList(), groups(numbers, keys));
  }

  /** Groups the measured numbers by method and basis, in the order of their first numbers. */
  private List<Group> groups(Numbers numbers, FileKeys keys) {
    Map<List<String>, List<Placed>> groups = new LinkedHashMap<>();
    for (ReportNumber number : numbers.all()) {
      if (number.estimate().isPresent()) {
        NumberView view = views.view(number);
        groups
            .computeIfAbsent(
                List.of(view.origin().method(), view.origin().basis()), k -> new ArrayList<>())
            .add(new Placed(view, keys.places(number.origin().rows())));
      }
    }
    return groups.entrySet().stream()
        .map(e -> new Group(e.getKey().get(0), e.getKey().get(1), e.getValue()))
        .toList();
  }

  /** Returns the largest sources of each number that has a budget, and the best advice. */
  private List<Budget> budgets() {
    List<Budget> budgets = new ArrayList<>();
    for (ReportNumber number : headline()) {
      List<Contribution> largest =
          number.outcome().fold(Outcome.Measured::budget, w -> List.<Contribution>of()).stream()
              .filter(c -> c.share() > 0)
              .limit(MOST_SOURCES)
              .toList();
      if (!largest.isEmpty()) {
        budgets.add(
            new Budget(
                number.label(),
                largest.stream().map(PageModel::source).toList(),
                largest.get(0).source().advice()));
      }
    }
    return budgets;
  }

  private static Source source(Contribution contribution) {
    return new Source(
        contribution.source().words(),
        contribution.share() < 0.005
            ? Texts.of("page.page_model.under_1")
            : NumberViews.share(contribution.share()));
  }
}
