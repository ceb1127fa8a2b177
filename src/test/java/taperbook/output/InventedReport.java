package taperbook.output;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.TextRun;
import taperbook.chart.render.Figure;
import taperbook.i18n.Message;
import taperbook.plan.Basis;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.CommonGround;
import taperbook.result.Contribution;
import taperbook.result.CrossCheck;
import taperbook.result.Curve;
import taperbook.result.Curves;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Numbers;
import taperbook.result.Outcome;
import taperbook.result.PairResult;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.Role;
import taperbook.result.SessionResult;
import taperbook.result.UncertaintySource;
import taperbook.session.Caveat;
import taperbook.session.Channel;
import taperbook.session.InputFile;
import taperbook.session.InputTable;
import taperbook.session.Origin;
import taperbook.session.RowRef;
import taperbook.session.Session;
import taperbook.session.Trace;

/** A complete invented report. */
final class InventedReport {
  private static final Color INK = new Color(0x1f2a30);

  static final String TITLE = "Northmoor Finch: a first look at charging & range";
  static final String ARTICLE =
      """
      The Northmoor Finch and Quarry Lane station are invented. This report shows what a small
      hatchback with a 62 kWh battery does at a motorway station on a cool morning.

      # What matters on the road

      After ${number("time_to_add_150_km")} at the plug there is charge for another 150 km,
      driven as in the range test. The peak of ${both("peak_power")} is held for
      ${number("peak_hold_time")}, and that **matters more** than the peak itself.

      ${figure("power-over-soc")}

      The window from 10 to 80 % is ${number("time_soc_10_80")}. From 20 to 80 % it took
      ${number("time_soc_20_80")}, give or take: ${range("time_soc_20_80")}. The session of
      *finch-spring* peaked at ${number("peak_power", "finch-spring")}.

      ## How it was done

      - Filmed with a fixed camera, read off afterwards
      - Plugged in with 12 % shown

      | Stop | Coffee | Rain |
      |:-----|-------:|:----:|
      | one  |      2 | no   |
      | two  |      1 | yes  |
      """;

  private static final double[] POWER_KW = {40, 118, 127, 92, 54, 31};

  private InventedReport() {}

  static ReportJob job() {
    return job(ARTICLE, TITLE);
  }

  /** The files of the report, written once for all tests that only read them. */
  static ReportFiles written() {
    return Once.FILES;
  }

  private static final class Once {
    private static final ReportFiles FILES = ReportWriter.write(job()).value().orElseThrow();
  }

  /** The report with a coverage interval of the time at peak and an invented budget. */
  static ReportJob jobWithBudget() {
    ReportJob job = job();
    SessionResult main = result(job).main();
    List<ReportNumber> numbers =
        main.numbers().all().stream()
            .map(n -> n.id().equals("peak_hold_time") ? withBudget(n) : n)
            .toList();
    SessionResult changed =
        new SessionResult(
            main.session(),
            main.rangeTest(),
            new Numbers(numbers),
            main.checks(),
            main.curves(),
            main.caveats());
    return with(job, new ReportResult(result(job).plan(), changed, result(job).compared()));
  }

  /** The report with a number of the pair of its two sessions. */
  static ReportJob jobWithPair() {
    return jobWithPair(ARTICLE);
  }

  static ReportJob jobWithPair(String article) {
    ReportJob job = job(article, TITLE);
    ReportResult result = result(job);
    SessionResult other = result.compared().get(0);
    String name = other.session().name();
    ReportNumber lead =
        new ReportNumber(
            Metric.charging(
                "mean_lead_shared",
                "Mean power of this session less that of the one in spring",
                Unit.KILOWATT,
                Method.POWER_LEAD),
            new Outcome.Measured(Estimate.around(12.5, 1.5), 0.95),
            new Origin(result.main().session().name(), name, List.of()),
            other.caveats());
    PairResult pair =
        new PairResult(
            name,
            Optional.empty(),
            List.of(),
            List.of(),
            Optional.empty(),
            new Numbers(List.of(lead)));
    return with(
        job,
        new ReportResult(
            result.plan(), result.main(), result.compared(), CommonGround.NONE, List.of(pair)));
  }

  /** The report compared with itself, with a first window that the session does not cover. */
  static ReportJob jobWhoseFirstWindowIsWithheld() {
    ReportJob job = job("Text.", TITLE);
    ReportPlan plan = result(job).plan();
    ReportPlan.Wishes wishes =
        new ReportPlan.Wishes(
            plan.wishes().distances(),
            plan.wishes().socMarks(),
            List.of(new SocWindow(10, 80), new SocWindow(20, 80)));
    SessionResult main = withHeadlines(result(job).main(), Set.of("time_soc_10_80"));
    return with(
        job,
        new ReportResult(
            new ReportPlan(
                plan.name(), plan.heading(), plan.subject(), wishes, plan.style(), plan.article()),
            main,
            List.of(main)));
  }

  private static SessionResult withHeadlines(SessionResult session, Set<String> ids) {
    List<ReportNumber> numbers =
        session.numbers().all().stream()
            .map(n -> ids.contains(n.id()) ? shownAtTheTop(n) : n)
            .toList();
    return new SessionResult(
        session.session(),
        session.rangeTest(),
        new Numbers(numbers),
        session.checks(),
        session.curves(),
        session.caveats());
  }

  private static ReportNumber shownAtTheTop(ReportNumber n) {
    return new ReportNumber(n.metric().in(Role.HEADLINE), n.outcome(), n.origin(), n.caveats());
  }

  private static ReportNumber withBudget(ReportNumber n) {
    List<Contribution> budget =
        List.of(
            new Contribution(UncertaintySource.BETWEEN_READINGS, 32.5, 0.81),
            new Contribution(UncertaintySource.POWER_DISPLAY, 15, 0.173),
            new Contribution(UncertaintySource.READING_HABIT, 4.5, 0.0155),
            new Contribution(UncertaintySource.CLOCK, 1.4, 0.0015));
    Outcome outcome = new Outcome.Measured(n.estimate().orElseThrow(), 0.95, budget);
    return new ReportNumber(n.metric(), outcome, n.origin(), n.caveats());
  }

  static ReportJob job(String article, String title) {
    return job(result(article, title), figures(), inputs(article));
  }

  /** The job of a report without corrections, published without its tables. */
  static ReportJob job(ReportResult result, List<Figure> figures, List<InputFile> inputs) {
    return new ReportJob(
        result,
        figures,
        Templates.builtIn(),
        inputs.stream().map(InputFile::withoutContent).toList(),
        inputs,
        List.of(),
        List.of(),
        LocalDate.of(2026, 5, 10),
        "Taperbook 0.1.0");
  }

  static ReportJob with(ReportJob job, ReportResult result) {
    return with(job, result, job.templates(), job.tables());
  }

  static ReportJob with(ReportJob job, Templates templates) {
    return with(job, result(job), templates, job.tables());
  }

  static ReportJob with(ReportJob job, Iterable<InputTable> tables) {
    return with(job, result(job), job.templates(), tables);
  }

  private static ReportJob with(
      ReportJob job, ReportResult result, Templates templates, Iterable<InputTable> tables) {
    return new ReportJob(
        result,
        job.figures(),
        templates,
        job.inputs(),
        job.attached(),
        tables,
        job.corrections(),
        job.date(),
        job.program());
  }

  static ReportResult result(ReportJob job) {
    return (ReportResult) job.results();
  }

  static ReportResult result(String article, String title) {
    ReportPlan plan =
        new ReportPlan(
            "finch-first-look",
            new ReportPlan.Heading(title, "A. Tester", Optional.of(LocalDate.of(2026, 5, 10))),
            new ReportPlan.Subject(
                "finch-quarry-lane", List.of("finch-spring"), List.of("finch-ring-road")),
            new ReportPlan.Wishes(
                List.of(
                    new WantedDistance(150, Unit.KILOMETRE),
                    new WantedDistance(300, Unit.KILOMETRE)),
                List.of(20, 40, 60, 80, 100),
                List.of(new SocWindow(20, 80), new SocWindow(10, 80))),
            new ReportPlan.Style(Unit.KILOMETRE, Basis.DRIVEN, "report"),
            new ReportPlan.Article(article, "reports/finch-first-look.md", 12));
    SessionResult main =
        session(
            "finch-quarry-lane",
            "2026-05-03",
            caveats(),
            new InventedNumbers("finch-quarry-lane", caveats()).full(),
            checks());
    List<Caveat> less = caveats().subList(0, 3);
    SessionResult spring =
        session(
            "finch-spring",
            "2026-03-21",
            less,
            new InventedNumbers("finch-spring", less).poorer(),
            List.of());
    return new ReportResult(plan, main, List.of(spring));
  }

  private static SessionResult session(
      String name, String date, List<Caveat> caveats, Numbers numbers, List<CrossCheck> checks) {
    String file = "sessions/" + name + "/readings.csv";
    Map<Channel, Trace> traces = new EnumMap<>(Channel.class);
    double[] seconds = {0, 245, 676, 1130, 1842, 2475};
    int[] lines = {2, 3, 4, 5, 6, 7};
    traces.put(
        Channel.SOC,
        new Trace(file, seconds, new double[] {12, 20, 40, 60, 80, 90}, lines, 0.5, 0.5));
    traces.put(Channel.POWER, new Trace(file, seconds, POWER_KW, lines, 0.5, 0.5));
    traces.put(
        Channel.ENERGY_ADDED,
        new Trace(file, seconds, new double[] {0, 5.1, 17.7, 30.4, 43, 49.3}, lines, 0.05, 0.5));
    return new SessionResult(
        new Session(
            name,
            InventedFacts.conditions(name, "Northmoor Finch", date),
            traces,
            List.of(),
            new Interval(0, 2475)),
        Optional.of(InventedFacts.rangeTest()),
        numbers,
        checks,
        new Curves(
            curve(new double[] {12, 20, 40, 60, 80, 90}, POWER_KW, 1),
            curve(seconds, POWER_KW, 1),
            curve(seconds, new double[] {12, 20, 40, 60, 80, 90}, 0.5),
            curve(seconds, new double[] {0, 33, 116, 198, 281, 322}, 3)),
        caveats);
  }

  private static Optional<Curve> curve(double[] x, double[] y, double half) {
    double[] low = Arrays.stream(y).map(v -> v - half).toArray();
    double[] high = Arrays.stream(y).map(v -> v + half).toArray();
    boolean[] gaps = new boolean[x.length];
    return Optional.of(new Curve(x, y, low, high, gaps));
  }

  /** One caveat of each kind. */
  static List<Caveat> caveats() {
    List<Caveat> caveats = new ArrayList<>();
    caveats.add(
        new Caveat(
            Caveat.Kind.BATTERY_TEMPERATURE,
            Message.verbatim(
                "The battery\u2019s temperature at the start is not known; a cold battery charges"
                    + " below its curve until it is warm.")));
    caveats.add(
        new Caveat(
            Caveat.Kind.PRECONDITIONING,
            Message.verbatim(
                "The battery was made ready only for the last four minutes of the approach.")));
    caveats.add(
        new Caveat(
            Caveat.Kind.STARTING_SOC,
            Message.verbatim(
                "The session began at 12 %; a session from a lower state may show a higher"
                    + " peak.")));
    caveats.add(
        new Caveat(
            Caveat.Kind.STATION_LIMIT,
            Message.verbatim("The station could give 200 kW, more than the car took.")));
    for (Caveat.Kind kind : Caveat.Kind.values()) {
      if (caveats.stream().noneMatch(c -> c.kind() == kind)) {
        caveats.add(
            new Caveat(
                kind, Message.verbatim("Something about: " + kind.title() + ", <told> & noted.")));
      }
    }
    return caveats;
  }

  private static List<CrossCheck> checks() {
    List<RowRef> rows = List.of(new RowRef("sessions/finch-quarry-lane/readings.csv", 4));
    return List.of(
        new CrossCheck(
            "check_energy_counter",
            "Energy added",
            Unit.KILOWATT_HOUR,
            new CrossCheck.Compared(
                new CrossCheck.Side("energy counter", Estimate.around(49.3, 0.1), rows),
                new CrossCheck.Side("power over time", Estimate.around(48.6, 1.9), rows))),
        new CrossCheck(
            "check_consumption_displayed",
            "Consumption of the range test",
            Unit.WATT_HOUR_PER_KILOMETRE,
            new CrossCheck.Compared(
                new CrossCheck.Side("energy over distance", Estimate.around(152.6, 1.8), rows),
                new CrossCheck.Side("displayed", Estimate.around(159, 0.5), rows))),
        new CrossCheck(
            "check_legs_distance",
            "Distance of the range test",
            Unit.KILOMETRE,
            new CrossCheck.NotPossible(Message.verbatim("the odometer was not read at the end"))));
  }

  static List<InputFile> inputs(String article) {
    return List.of(
        input("reports/finch-first-look.md", "---\ntitle: x\n---\n" + article),
        input("sessions/finch-quarry-lane/conditions.csv", "item,value,unit,how known\n"),
        input("sessions/finch-quarry-lane/readings.csv", "elapsed [min:s],soc [%]\n0:00,12\n"),
        input("sessions/finch-ring-road/range-test.csv", "item,value,unit,how known\r\n"));
  }

  private static InputFile input(String path, String text) {
    return new InputFile(path, text.getBytes(StandardCharsets.UTF_8));
  }

  static List<Figure> figures() {
    return List.of(
        figure("power-over-soc", "Power over state of charge"),
        figure("soc-over-time", "State of charge over time"));
  }

  private static Figure figure(String id, String title) {
    return Figure.of(
        id,
        title,
        "Points are readings; the line between them is straight.",
        title + ": from 40 kW at 12 % up to 128 kW at 24 % and down to 31 kW at 90 %.",
        InventedReport::paint);
  }

  private static List<TextRun> paint(Graphics2D g, ChartStyle style) {
    g.setColor(INK);
    g.draw(new Line2D.Double(60, 350, 700, 350));
    g.draw(new Line2D.Double(60, 350, 60, 30));
    g.draw(new Line2D.Double(60, 220, 330, 75));
    g.draw(new Line2D.Double(330, 75, 690, 310));
    TextRun.Face bold = new TextRun.Face(15, true, INK);
    TextRun.Face face = new TextRun.Face(15, false, INK);
    return List.of(
        new TextRun("kW", 60, 22, TextRun.Anchor.START, bold),
        new TextRun("state of charge, %", 560, 380, TextRun.Anchor.START, face));
  }
}
