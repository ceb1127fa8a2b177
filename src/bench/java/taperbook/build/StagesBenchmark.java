package taperbook.build;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import taperbook.chart.plots.FigureSet;
import taperbook.chart.render.Figure;
import taperbook.chart.render.Rendition;
import taperbook.diagnostics.Problem;
import taperbook.metric.ReportMetrics;
import taperbook.output.ReportFiles;
import taperbook.output.ReportJob;
import taperbook.output.ReportWriter;
import taperbook.output.pdf.PdfMetadata;
import taperbook.output.pdf.PdfPage;
import taperbook.output.view.HtmlPage;
import taperbook.plan.ReportPlan;
import taperbook.result.Numbers;
import taperbook.result.ReportResult;
import taperbook.session.RangeTest;
import taperbook.session.Session;
import taperbook.workspace.ReportSources;

@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(
    value = 1,
    jvmArgsAppend = {"-XX:+UseSerialGC", "-Djava.awt.headless=true"})
public class StagesBenchmark {
  private static final String REPORT = "finch-first-look";

  private CommandContext commandContext;
  private ReportSources sources;
  private ReportPlan plan;
  private Session session;
  private List<RangeTest> tests;
  private ReportResult result;
  private ReportJob job;
  private List<Figure> figures;
  private String page;

  /** Runs each stage once to create the inputs of the next. */
  @Setup
  public void prepare() throws IOException {
    commandContext = CommandContext.in(Path.of(""), Map.of());
    plan = (ReportPlan) commandContext.project().plan(REPORT).value().orElseThrow();
    sources = commandContext.project().sources(plan).value().orElseThrow();
    session = commandContext.project().session(plan.subject().session()).value().orElseThrow();
    tests =
        plan.subject().rangeTests().stream()
            .map(t -> commandContext.project().rangeTest(t).value().orElseThrow())
            .toList();
    result = commandContext.pipeline(sources).measured().value().orElseThrow();
    job = commandContext.pipeline(sources).job(result, List.of());
    figures = job.figures();
    ReportFiles files = ReportWriter.write(job).value().orElseThrow();
    page = new String(files.bytes("report.html"), StandardCharsets.UTF_8);
  }

  @Benchmark
  public Object read_and_check() {
    return CommandContext.in(Path.of(""), Map.of()).reportBuild(REPORT).value().orElseThrow();
  }

  @Benchmark
  public Numbers measure_bounds() {
    return ReportMetrics.measureSession(plan, session, tests);
  }

  /** Measures both sessions with simulation and budgets, and compares them. */
  @Benchmark
  public ReportResult measure_and_simulate() {
    return commandContext.pipeline(sources).measured().value().orElseThrow();
  }

  @Benchmark
  public List<String> draw_svg() {
    return FigureSet.draw(result).stream().map(Figure::svg).toList();
  }

  /** One figure as PNG of 1920 x 1080 pixels. */
  @Benchmark
  public byte[] paint_png() {
    return figures.get(0).png(Rendition.FILM);
  }

  @Benchmark
  public List<Problem> templates() {
    return ReportWriter.problems(job);
  }

  @Benchmark
  public byte[] html() {
    return HtmlPage.bytes(page);
  }

  /** The HTML page converted to PDF, which takes about as long as the report's PDF. */
  @Benchmark
  public byte[] pdf() {
    PdfMetadata heading = new PdfMetadata("Bench", "", "", "Taperbook", job.date());
    return new PdfPage(figures, "report.ftlh", true)
        .bytes(page, heading, List::of)
        .value()
        .orElseThrow();
  }

  @Benchmark
  public ReportFiles write_all() {
    return ReportWriter.write(job).value().orElseThrow();
  }
}
