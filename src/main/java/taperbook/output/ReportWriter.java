package taperbook.output;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import taperbook.chart.render.Figure;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.i18n.Texts;
import taperbook.output.article.ArticlePart;
import taperbook.output.article.ArticleText;
import taperbook.output.data.CorrectionsCsv;
import taperbook.output.data.DataPackage;
import taperbook.output.data.NumbersCsv;
import taperbook.output.data.NumbersJson;
import taperbook.output.pdf.LibraryLogging;
import taperbook.output.pdf.PdfAttachment;
import taperbook.output.pdf.PdfMetadata;
import taperbook.output.pdf.PdfPage;
import taperbook.output.share.Captions;
import taperbook.output.share.FilmScript;
import taperbook.output.share.ShareTable;
import taperbook.output.share.SummaryText;
import taperbook.result.ReportResult;
import taperbook.session.InputFile;

/** Writes all files of one report. */
public final class ReportWriter {
  /**
   * Returns the files of a report, or every problem in its article and templates. The files are:
   * {@code report.html}, {@code report.pdf}, {@code methods.pdf}, {@code numbers.json}, {@code
   * numbers.csv}, {@code datapackage.json} and the files it describes, {@code film/script.md},
   * {@code share/} with summary, table, captions and the power over state of charge in portrait and
   * square format, and each chart as {@code figures/NAME.svg} and {@code figures/NAME.png}; for a
   * film also as {@code film/NAME-dark.png}, {@code -clear} and {@code -small}.
   */
  public Checked<ReportFiles> write(ReportJob job) {
    LibraryLogging.silenceLoggers();
    return texts(job).then(texts -> files(job, texts));
  }

  /** Returns every problem that {@link #write} would find, without creating the files. */
  public List<Problem> problems(ReportJob job) {
    Checked<TemplateTexts> texts = texts(job);
    List<Problem> problems = new ArrayList<>(texts.problems());
    if (texts.value().isPresent()) {
      TemplateTexts pages = texts.value().get();
      problems.addAll(pages.screen().problems());
      problems.addAll(pages.print().problems());
      problems.addAll(pages.methods("").problems());
    }
    return problems.stream().distinct().toList();
  }

  private static Checked<TemplateTexts> texts(ReportJob job) {
    Set<String> charts = Figure.ids(job.figures());
    Checked<String> template = TemplateChoice.of(job.result().plan(), job.templates());
    Checked<List<ArticlePart>> article = new ArticleText(job.result(), charts).parts();
    Checked<String> answer = ArticleText.answer(job.result());
    List<Problem> problems = new ArrayList<>(template.problems());
    problems.addAll(answer.problems());
    problems.addAll(article.problems());
    if (template.value().isEmpty() || answer.value().isEmpty() || article.value().isEmpty()) {
      return Checked.refused(problems);
    }
    TemplateModel model = new TemplateModel(job, answer.value().get(), article.value().get());
    return Checked.of(new TemplateTexts(job.templates(), template.value().get(), model), problems);
  }

  private static Checked<ReportFiles> files(ReportJob job, TemplateTexts texts) {
    boolean film = job.result().plan().style().film().charts();
    ConcurrentFiles concurrent = ConcurrentFiles.begin(job.figures(), film, texts::screen);
    ReportFiles files = new ReportFiles();
    byte[] json = new NumbersJson(job.result(), job.inputs()).bytes();
    files.put("numbers.json", json);
    files.put("share/summary.md", texts.summary());
    ShareTable table = texts.shareTable();
    if (!table.isEmpty()) {
      files.put("share/table.html", table.html());
      files.put("share/table.csv", table.csv());
    }
    tables(job, table).forEach(files::put);
    files.put("film/script.md", new FilmScript(job.result(), job.date()).bytes());
    Captions captions = new Captions(job.result());
    if (!captions.isEmpty()) {
      files.put("share/captions.srt", captions.srt());
      files.put("share/captions.vtt", captions.vtt());
    }
    Checked<String> print = texts.print();
    Checked<String> methods =
        print.value().isEmpty()
            ? texts.methods("")
            : pdfs(job, texts, print.value().get(), json, files);
    List<Problem> problems = new ArrayList<>(concurrent.problems());
    problems.addAll(print.problems());
    problems.addAll(methods.problems());
    Checked<ReportFiles> all = Checked.of(files, problems.stream().distinct().toList());
    all.value().ifPresentOrElse(concurrent::addTo, concurrent::stop);
    return all;
  }

  /** Lays out the report's PDF, then the methods appendix, which contains the PDF's hash. */
  private static Checked<String> pdfs(
      ReportJob job, TemplateTexts texts, String print, byte[] json, ReportFiles files) {
    boolean builtIn = job.templates().isBuiltIn();
    Checked<byte[]> report =
        new PdfPage(job.figures(), texts.template(), builtIn)
            .bytes(
                print, heading(job, job.result().plan().heading().title()), attachments(job, json));
    return report.then(
        pdf -> {
          files.put("report.pdf", pdf);
          Checked<String> methods = texts.methods(new InputFile("report.pdf", pdf).sha256());
          return methods.then(
              text -> {
                Checked<byte[]> appendix =
                    new PdfPage(job.figures(), Templates.METHODS, builtIn)
                        .bytes(text, heading(job, methodsTitle(job)), List.of());
                appendix.value().ifPresent(bytes -> files.put("methods.pdf", bytes));
                return appendix.then(bytes -> Checked.good(text));
              });
        });
  }

  /** Returns all CSV files and their description. */
  private static Map<String, byte[]> tables(ReportJob job, ShareTable table) {
    ReportResult result = job.result();
    byte[] numbers = NumbersCsv.bytes(result);
    DataPackage described =
        new DataPackage(result.plan(), job.date(), job.tables()).numbers(numbers, result.numbers());
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("numbers.csv", numbers);
    if (!table.isEmpty()) {
      described.milestones(table.csv(), table.columns(), table.cells());
    }
    if (!job.corrections().isEmpty()) {
      byte[] corrections = CorrectionsCsv.bytes(job.corrections());
      files.put("corrections.csv", corrections);
      described.corrections(corrections);
    }
    files.putAll(described.files());
    return files;
  }

  /**
   * Returns the inputs, the built-in templates (so that a later version can find them) and the
   * numbers.
   */
  private static List<PdfAttachment> attachments(ReportJob job, byte[] json) {
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

  private static String methodsTitle(ReportJob job) {
    return Texts.of("page.report_writer.methods", job.result().plan().heading().title());
  }

  private static PdfMetadata heading(ReportJob job, String title) {
    return new PdfMetadata(
        title,
        job.result().plan().heading().author(),
        job.result().main().session().vehicle(),
        job.program(),
        job.date());
  }

  /** The outputs of the templates of a report, each rendered on request. */
  private static final class TemplateTexts {
    private final String template;
    private final TemplateModel model;
    private final Templates templates;

    /**
     * Creates the texts.
     *
     * @param template file name of the report's template
     */
    TemplateTexts(Templates templates, String template, TemplateModel model) {
      this.template = template;
      this.model = model;
      this.templates = templates;
    }

    /** Returns the file name of the report's template. */
    String template() {
      return template;
    }

    /** Renders the browser page. */
    Checked<String> screen() {
      return templates.page(template, model.screen());
    }

    /** Renders the page of the PDF. */
    Checked<String> print() {
      return templates.page(template, model.print());
    }

    /** Returns the content of {@code share/summary.md}. */
    byte[] summary() {
      return new SummaryText(model.page(), model.summary()).bytes();
    }

    /** Returns the table to embed elsewhere. */
    ShareTable shareTable() {
      return new ShareTable(model.page());
    }

    /**
     * Renders the methods appendix.
     *
     * @param sha256 hash of the PDF that the appendix belongs to; empty if not yet known
     */
    Checked<String> methods(String sha256) {
      return templates.page(Templates.METHODS, model.methods(sha256));
    }
  }
}
