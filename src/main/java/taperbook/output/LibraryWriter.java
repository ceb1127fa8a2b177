package taperbook.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import taperbook.chart.render.Figure;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.i18n.Texts;
import taperbook.output.article.ArticlePart;
import taperbook.output.article.ArticleSource;
import taperbook.output.article.ArticleText;
import taperbook.output.data.DataPackage;
import taperbook.output.data.NumbersCsv;
import taperbook.output.data.NumbersJson;
import taperbook.output.pdf.LibraryLogging;
import taperbook.output.pdf.PdfAttachment;
import taperbook.output.pdf.PdfMetadata;
import taperbook.output.pdf.PdfPage;
import taperbook.plan.ReportPlan;
import taperbook.result.LibraryRow;
import taperbook.result.Numbers;
import taperbook.session.InputHash;

/** Writes all files of one library. */
public final class LibraryWriter {
  /**
   * Returns the files of a library, or every problem in its article and templates. The files are
   * those of a report except {@code methods.pdf}: {@code report.pdf} includes the methods.
   */
  public Checked<ReportFiles> write(LibraryJob job) {
    LibraryLogging.silenceLoggers();
    return pages(job).then(pages -> files(job, pages));
  }

  /** Returns every problem that {@link #write} would find, without creating the files. */
  public List<Problem> problems(LibraryJob job) {
    return pages(job).problems();
  }

  /** The two outputs of the template. */
  private record Pages(String template, String html, String print) {}

  private static Checked<Pages> pages(LibraryJob job) {
    Set<String> charts = Figure.ids(job.figures());
    ArticleSource source = ArticleSource.of(job.result(), charts);
    Checked<List<ArticlePart>> article = new ArticleText(source, charts).parts();
    Checked<String> template = TemplateChoice.of(job.result().plan(), job.templates());
    List<Problem> problems = new ArrayList<>(template.problems());
    problems.addAll(article.problems());
    if (template.value().isEmpty() || article.value().isEmpty()) {
      return Checked.refused(problems);
    }
    LibraryModel model = new LibraryModel(job, article.value().get());
    String name = template.value().get();
    Checked<String> html = job.templates().page(name, model.screen());
    Checked<String> print = job.templates().page(name, model.print());
    problems.addAll(html.problems());
    problems.addAll(print.problems());
    Pages pages = new Pages(name, html.value().orElse(""), print.value().orElse(""));
    return Checked.of(pages, problems.stream().distinct().toList());
  }

  private static Checked<ReportFiles> files(LibraryJob job, Pages pages) {
    ReportFiles files = new ReportFiles();
    ConcurrentFiles concurrent =
        ConcurrentFiles.begin(job.figures(), false, () -> Checked.good(pages.html()));
    List<PdfAttachment> attachments = new ArrayList<>();
    if (job.result().isLarge()) {
      streamNumbers(job, files);
    } else {
      job.attached().forEach(i -> attachments.add(new PdfAttachment(i.path(), i.bytes())));
      attachments.add(new PdfAttachment("numbers.json", numbers(job, files)));
    }
    Checked<byte[]> pdf =
        new PdfPage(job.figures(), pages.template(), job.templates().isBuiltIn())
            .bytes(pages.print(), heading(job), attachments);
    pdf.value()
        .ifPresentOrElse(
            bytes -> {
              files.put("report.pdf", bytes);
              concurrent.addTo(files);
            },
            concurrent::stop);
    return pdf.then(bytes -> Checked.good(files));
  }

  /** Adds the numbers and the package that describes them; returns {@code numbers.json}. */
  private static byte[] numbers(LibraryJob job, ReportFiles files) {
    byte[] json = new NumbersJson(job.result(), job.inputs()).bytes();
    files.put("numbers.json", json);
    byte[] csv = NumbersCsv.bytes(job.result());
    files.put("numbers.csv", csv);
    dataPackage(job).numbers(csv, all(job)).files().forEach(files::put);
    return json;
  }

  /** Streams the numbers of a large library, which need more memory than its rows. */
  private static void streamNumbers(LibraryJob job, ReportFiles files) {
    StreamedFile csv = out -> NumbersCsv.write(job.result(), out);
    files.put("numbers.csv", csv);
    files.put("numbers.json", out -> new NumbersJson(job.result(), job.inputs()).writeTo(out));
    try {
      InputHash hash = StreamedFile.hash("numbers.csv", csv);
      dataPackage(job).numbers(hash, all(job)).files().forEach(files::put);
    } catch (IOException e) {
      throw new UncheckedIOException("numbers.csv", e);
    }
  }

  private static DataPackage dataPackage(LibraryJob job) {
    return new DataPackage(job.result().plan(), job.date(), job.tables());
  }

  private static List<Numbers> all(LibraryJob job) {
    return job.result().rows().stream().map(LibraryRow::numbers).toList();
  }

  private static PdfMetadata heading(LibraryJob job) {
    ReportPlan.Heading heading = job.result().plan().heading();
    int sessions = job.result().rows().size();
    return new PdfMetadata(
        heading.title(),
        heading.author(),
        Texts.count(sessions, "count.session", "count.sessions"),
        job.program(),
        job.date());
  }
}
