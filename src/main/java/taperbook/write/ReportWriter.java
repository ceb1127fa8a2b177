package taperbook.write;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import taperbook.draw.picture.Figure;
import taperbook.model.InputFile;
import taperbook.model.ReportPlan;
import taperbook.model.ReportResult;
import taperbook.problem.Checked;
import taperbook.problem.Problem;
import taperbook.write.data.CorrectionsCsv;
import taperbook.write.data.DataPackage;
import taperbook.write.data.NumbersCsv;
import taperbook.write.data.NumbersJson;
import taperbook.write.film.FilmScript;
import taperbook.write.pdf.PdfAttachment;
import taperbook.write.pdf.PdfHeading;
import taperbook.write.pdf.PdfPage;
import taperbook.write.pdf.QuietLibraries;
import taperbook.write.text.ArticlePart;
import taperbook.write.text.ArticleText;
import taperbook.write.text.RestrictedTemplates;

/** Writes all files of one report. */
public final class ReportWriter {
  private static final String METHODS = "methods.ftlh";

  /**
   * The files of a report, or every problem met in its article and templates. The files that a
   * report has: {@code report.html}, {@code report.pdf}, {@code methods.pdf}, {@code numbers.json},
   * {@code numbers.csv}, {@code datapackage.json} and what it describes, {@code film/script.md},
   * and each chart as {@code figures/NAME.svg} and {@code figures/NAME.png}; for a film also as
   * {@code film/NAME-dark.png}, {@code -clear} and {@code -small}.
   */
  public Checked<ReportFiles> write(WriteJob job) {
    QuietLibraries.hush();
    return pages(job).then(pages -> files(job, pages));
  }

  /** Every problem that {@link #write} would meet, without making the files. */
  public List<Problem> problems(WriteJob job) {
    return pages(job).problems();
  }

  private static Checked<Pages> pages(WriteJob job) {
    Set<String> charts = Figure.ids(job.figures());
    Checked<String> template = TemplateChoice.of(job.result().plan(), job.templates());
    Checked<List<ArticlePart>> article = new ArticleText(job.result(), charts).parts();
    List<Problem> problems = new ArrayList<>(template.problems());
    problems.addAll(article.problems());
    if (template.value().isEmpty() || article.value().isEmpty()) {
      return Checked.refused(problems);
    }
    String name = template.value().get();
    return Checked.of(article.value().get(), problems).then(parts -> pages(job, name, parts));
  }

  /**
   * The texts that the templates give.
   *
   * @param model what they print
   * @param templates the templates that gave them
   */
  private record Pages(
      String html, String print, TemplateModel model, RestrictedTemplates templates) {}

  private static Checked<Pages> pages(WriteJob job, String name, List<ArticlePart> article) {
    TemplateModel model = new TemplateModel(job, article);
    RestrictedTemplates templates = job.templates().pages();
    List<Checked<String>> texts =
        List.of(
            templates.page(name, model.screen()),
            templates.page(name, model.print()),
            templates.page(METHODS, model.methods("")));
    List<Problem> problems = texts.stream().flatMap(t -> t.problems().stream()).distinct().toList();
    List<String> values =
        texts.stream().map(t -> t.value().map(WholeUnits::kept).orElse("")).toList();
    return Checked.of(new Pages(values.get(0), values.get(1), model, templates), problems);
  }

  private static Checked<ReportFiles> files(WriteJob job, Pages pages) {
    ReportFiles files = new ReportFiles();
    boolean film = job.result().plan().style().film();
    Beside beside = Beside.begin(job.figures(), film, pages.html());
    byte[] json = new NumbersJson(job.result(), job.inputs()).bytes();
    files.put("numbers.json", json);
    tables(job).forEach(files::put);
    List<PdfAttachment> attachments = attachments(job, json);
    PdfPage pdf = new PdfPage(job.figures());
    files.put("report.pdf", pdf.bytes(pages.print(), heading(job, ""), attachments));
    Checked<String> methods = methods(pages, files.bytes("report.pdf"));
    methods
        .value()
        .map(text -> pdf.bytes(text, heading(job, "Methods: "), List.of()))
        .ifPresent(bytes -> files.put("methods.pdf", bytes));
    files.put("film/script.md", new FilmScript(job.result(), job.made()).bytes());
    beside.addTo(files);
    return methods.then(text -> Checked.good(files));
  }

  /** All CSV files, and what describes them. */
  private static Map<String, byte[]> tables(WriteJob job) {
    ReportResult result = job.result();
    byte[] numbers = NumbersCsv.bytes(result);
    DataPackage described =
        new DataPackage(result.plan(), job.made(), job.tables()).numbers(numbers, result.numbers());
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("numbers.csv", numbers);
    if (!job.corrections().isEmpty()) {
      byte[] corrections = CorrectionsCsv.bytes(job.corrections());
      files.put("corrections.csv", corrections);
      described.corrections(corrections);
    }
    files.putAll(described.files());
    return files;
  }

  /** The methods appendix, which names the report's PDF by its hash and so comes after it. */
  private static Checked<String> methods(Pages pages, byte[] pdf) {
    String sha256 = new InputFile("report.pdf", pdf).sha256();
    return pages
        .templates()
        .page(METHODS, pages.model().methods(sha256))
        .then(text -> Checked.good(WholeUnits.kept(text)));
  }

  /**
   * The inputs, the templates that are built in, so that a later program finds them, the numbers.
   */
  private static List<PdfAttachment> attachments(WriteJob job, byte[] json) {
    Map<String, PdfAttachment> attachments = new LinkedHashMap<>();
    job.inputs().forEach(i -> attachments.put(i.path(), new PdfAttachment(i.path(), i.bytes())));
    job.templates()
        .texts()
        .forEach(
            (name, text) ->
                attachments.computeIfAbsent(
                    "templates/" + name,
                    path -> new PdfAttachment(path, text.getBytes(StandardCharsets.UTF_8))));
    attachments.put("numbers.json", new PdfAttachment("numbers.json", json));
    return List.copyOf(attachments.values());
  }

  private static PdfHeading heading(WriteJob job, String before) {
    ReportPlan.Heading heading = job.result().plan().heading();
    return new PdfHeading(
        before + heading.title(),
        heading.author(),
        job.result().main().session().vehicle(),
        job.program(),
        job.made());
  }
}
