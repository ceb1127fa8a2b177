package taperbook.endtoend;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import taperbook.build.CommandContext;
import taperbook.build.ResultCache;
import taperbook.buildinfo.BuildInfo;
import taperbook.buildinfo.ReportDate;
import taperbook.diagnostics.Checked;
import taperbook.input.folder.InMemoryFolder;
import taperbook.output.ReportFiles;
import taperbook.output.ReportJob;
import taperbook.output.ReportWriter;
import taperbook.output.Templates;
import taperbook.output.pdf.PdfMetadata;
import taperbook.plan.ReportPlan;
import taperbook.result.ReportResult;
import taperbook.session.InputFile;
import taperbook.verify.CarriedReport;
import taperbook.verify.NumbersFile;
import taperbook.verify.ReportPdfReader;
import taperbook.workspace.Project;
import taperbook.workspace.ProjectTemplates;
import taperbook.workspace.PublishedVersions;

/** The valid folder of the corpus in memory, with some files replaced. */
final class FuzzProject {
  private static final Path VALID = CorpusFile.FOLDER.resolve("valid");
  private static final LocalDate DAY = LocalDate.of(2026, 4, 24);
  private static final String ARTICLE_ONLY =
      page("<#list article as part><#if part.html??>${part.html}</#if></#list>");

  /** The model of a fuzzed template. */
  static final Map<String, Object> SMALL_MODEL =
      Map.of("title", "x", "numbers", List.of(Map.of("id", "peak_power", "value", 142)), "n", 3);

  /** A table of another program and the map that reads it. */
  static final String LOG =
      """
      Log of a drive

      when;share;load;meter;cells;said
      2026-03-14 23:50:00;20;90,5;100,0;21;
      2026-03-14 23:55:00;32;88,0;107,5;n/a;on
      2026-03-15 00:05:00;51;61,5;119,9;28;
      2026-03-15 00:20:00;70;40,0;131,2;30;off
      """;

  static final String MAP =
      """
      item,column or value,unit,factor,offset,format,missing
      file,log.csv
      leading lines,2
      delimiter,;
      decimal mark,","
      clock,when,,,,yyyy-MM-dd HH:mm:ss
      soc,share,%
      power,load,kW
      energy added,meter,kWh
      battery temperature,cells,Cel,1,0,,n/a
      note,said
      """;

  private final Map<String, InputFile> content;

  private FuzzProject(Map<String, InputFile> content) {
    this.content = content;
  }

  static FuzzProject valid() {
    return new FuzzProject(new TreeMap<>(Valid.FILES));
  }

  static FuzzProject with(String file, byte[] data) {
    return valid().and(file, data);
  }

  FuzzProject and(String file, byte[] data) {
    content.put(file, new InputFile(file, data));
    return this;
  }

  List<String> paths() {
    return List.copyOf(content.keySet());
  }

  byte[] bytes(String path) {
    return Optional.ofNullable(content.get(path)).orElseThrow().bytes();
  }

  Project files() {
    return new Project(new InMemoryFolder(content), templates().names());
  }

  Checked<ReportResult> measured() {
    Project project = files();
    Path reports = Path.of("reports-of-no-project");
    CommandContext context =
        new CommandContext(
            project,
            templates(),
            BuildInfo.ofThisProgram(),
            new ReportDate(Map.of()),
            reports,
            report -> PublishedVersions.in(reports, report),
            false,
            ResultCache.none());
    return project
        .plan("look")
        .then(plan -> project.sources((ReportPlan) plan))
        .then(sources -> context.pipeline(sources).measured());
  }

  private static ProjectTemplates templates() {
    return Valid.TEMPLATES;
  }

  /** The result of the valid folder with another article. */
  static ReportResult measuredWith(String article) {
    ReportResult valid = Measured.RESULT;
    ReportPlan plan = valid.plan();
    ReportPlan other =
        new ReportPlan(
            plan.name(),
            plan.heading(),
            plan.subject(),
            plan.wishes(),
            plan.style(),
            new ReportPlan.Article(article, plan.article().file(), plan.article().firstLine()));
    return new ReportResult(other, valid.main(), valid.compared(), valid.common(), valid.pairs());
  }

  /** A page that contains only the given body. */
  static String page(String html) {
    return "<html lang=\"en\"><head><title>x</title></head><body>" + html + "</body></html>";
  }

  static PdfMetadata heading() {
    return new PdfMetadata("x", "y", "z", "fuzzing", DAY);
  }

  static Map<String, String> bareTemplates() {
    return Map.of("report.ftlh", ARTICLE_ONLY, "methods.ftlh", page("x"));
  }

  /** The report of the valid folder as read from its PDF. */
  static CarriedReport published() {
    return Published.REPORT;
  }

  static byte[] publishedPdf() {
    return Published.FILES.bytes("report.pdf");
  }

  static byte[] publishedNumbers() {
    return Published.FILES.bytes("numbers.json");
  }

  static CarriedReport with(CarriedReport published, NumbersFile numbers) {
    return new CarriedReport(published.files(), numbers, published.program(), published.made());
  }

  private static final class Valid {
    static final Map<String, InputFile> FILES = read();
    static final ProjectTemplates TEMPLATES = ProjectTemplates.carried(List.of(), List.of());
    static final Templates BUILT_IN = Templates.builtIn();

    private static Map<String, InputFile> read() {
      try (Stream<Path> all = Files.walk(VALID)) {
        Map<String, InputFile> files = new TreeMap<>();
        for (Path file : all.filter(Files::isRegularFile).toList()) {
          String path = VALID.relativize(file).toString();
          files.put(path, new InputFile(path, Files.readAllBytes(file)));
        }
        return files;
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  private static final class Measured {
    static final ReportResult RESULT = valid().measured().value().orElseThrow();
  }

  private static final class Published {
    static final ReportFiles FILES = make();
    static final CarriedReport REPORT =
        ReportPdfReader.read("report.pdf", FILES.bytes("report.pdf")).value().orElseThrow();

    private static ReportFiles make() {
      List<InputFile> inputs = List.copyOf(Valid.FILES.values());
      ReportJob job =
          new ReportJob(
              Measured.RESULT,
              List.of(),
              Valid.BUILT_IN.with(bareTemplates()),
              inputs.stream().map(InputFile::withoutContent).toList(),
              inputs,
              List.of(),
              List.of(),
              DAY,
              "fuzzing");
      return ReportWriter.write(job).value().orElseThrow();
    }
  }
}
