package taperbook.output;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Supplier;
import taperbook.chart.render.Figure;
import taperbook.chart.render.Rendition;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.i18n.Texts;
import taperbook.output.data.CorrectionsCsv;
import taperbook.output.data.DataPackage;
import taperbook.output.data.NumbersCsv;
import taperbook.output.data.NumbersJson;
import taperbook.output.library.LibraryPage;
import taperbook.output.pdf.LibraryLogging;
import taperbook.output.pdf.PdfAttachment;
import taperbook.output.pdf.PdfMetadata;
import taperbook.output.pdf.PdfPage;
import taperbook.output.share.Captions;
import taperbook.output.share.FilmScript;
import taperbook.output.share.ShareTable;
import taperbook.output.view.HtmlPage;
import taperbook.plan.ReportPlan;
import taperbook.result.LibraryResult;
import taperbook.result.ReportResult;
import taperbook.session.InputFile;
import taperbook.session.InputHash;

/** Writes all files of one report or library. */
public final class ReportWriter {
  /** The figure that is also painted for social feeds. */
  private static final String SHARED = "power-over-soc";

  private final ReportJob job;
  private final ReportFiles files = new ReportFiles();

  private ReportWriter(ReportJob job) {
    this.job = job;
  }

  /**
   * Returns the files of a report, or every problem in its article and templates. The files are:
   * {@code report.html}, {@code report.pdf}, {@code methods.pdf}, {@code numbers.json}, {@code
   * numbers.csv}, {@code datapackage.json} and the files it describes, {@code film/script.md},
   * {@code share/} with summary, table, captions and the power over state of charge in portrait and
   * square format, and each chart as {@code figures/NAME.svg} and {@code figures/NAME.png}; for a
   * film also as {@code film/NAME-dark.png}, {@code -clear} and {@code -small}. A library has no
   * {@code film/} and {@code share/}, and its {@code report.pdf} includes the methods.
   */
  public static Checked<ReportFiles> write(ReportJob job) {
    return write(job, page -> {});
  }

  /**
   * Returns the files as {@link #write(ReportJob)} does.
   *
   * @param firstPage receives {@code report.html} as soon as it is complete, on another thread,
   *     unless the pages have problems; the PDFs may still have some
   */
  public static Checked<ReportFiles> write(ReportJob job, Consumer<byte[]> firstPage) {
    LibraryLogging.silenceLoggers();
    return ReportPages.of(job).then(pages -> new ReportWriter(job).files(pages, firstPage));
  }

  /** Returns every problem that {@link #write} would find, without creating the files. */
  public static List<Problem> problems(ReportJob job) {
    return ReportPages.problems(job);
  }

  private Checked<ReportFiles> files(ReportPages pages, Consumer<byte[]> firstPage) {
    // The PDFs take longest. They need the data only at their end, and no pictures.
    ExecutorService beside = Executors.newFixedThreadPool(2, ReportWriter::daemon);
    CompletableFuture<Checked<byte[]>> page =
        CompletableFuture.supplyAsync(() -> page(pages, firstPage), beside);
    CompletableFuture<List<PdfAttachment>> data =
        CompletableFuture.supplyAsync(() -> data(pages), beside);
    CompletableFuture<Map<String, byte[]>> pictures =
        CompletableFuture.supplyAsync(this::pictures, beside);
    try {
      Checked<String> print = pages.print();
      Checked<?> pdfs =
          print.value().isPresent()
              ? pdfs(pages, print.value().get(), data::join)
              : Checked.refused(pages.problems());
      Checked<byte[]> screen = page.join();
      List<Problem> problems = new ArrayList<>(screen.problems());
      problems.addAll(print.problems());
      problems.addAll(pdfs.problems());
      if (screen.isUsable() && pdfs.isUsable()) {
        files.put("report.html", screen.value().get());
        pictures.join().forEach(files::put);
      }
      return Checked.of(files, problems.stream().distinct().toList());
    } finally {
      beside.shutdownNow();
    }
  }

  private static Checked<byte[]> page(ReportPages pages, Consumer<byte[]> firstPage) {
    Checked<byte[]> page = pages.screen().then(text -> Checked.good(HtmlPage.bytes(text)));
    page.value().ifPresent(firstPage);
    return page;
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "beside");
    thread.setDaemon(true);
    return thread;
  }

  private Map<String, byte[]> pictures() {
    Map<String, byte[]> made = new LinkedHashMap<>();
    boolean film = job.results().plan().style().film().charts();
    for (Figure figure : job.figures()) {
      String stem = "figures/" + figure.id();
      made.put(stem + ".svg", (figure.svg() + "\n").getBytes(StandardCharsets.UTF_8));
      made.put(stem + ".png", figure.png());
      if (figure.id().equals(SHARED)) {
        made.put("share/portrait.png", figure.png(Rendition.PORTRAIT));
        made.put("share/square.png", figure.png(Rendition.SQUARE));
      }
      if (film) {
        for (Rendition rendition : List.of(Rendition.DARK, Rendition.CLEAR, Rendition.SMALL)) {
          made.put("film/" + figure.id() + rendition.ending() + ".png", figure.png(rendition));
        }
      }
    }
    return made;
  }

  /** Lays out the PDF, then the methods appendix of a session, which contains the PDF's hash. */
  private Checked<byte[]> pdfs(
      ReportPages pages, String print, Supplier<List<PdfAttachment>> attachments) {
    String title = job.results().plan().heading().title();
    Checked<byte[]> report = pdf("report.pdf", pages.template(), print, title, attachments);
    if (job.results() instanceof LibraryResult) {
      return report;
    }
    String appendix = Texts.of("page.report_writer.methods", title);
    return report
        .then(pdf -> pages.methods(new InputFile("report.pdf", pdf).sha256()))
        .then(text -> pdf("methods.pdf", Templates.METHODS, text, appendix, List::of));
  }

  private Checked<byte[]> pdf(
      String file,
      String template,
      String page,
      String title,
      Supplier<List<PdfAttachment>> attachments) {
    ReportPlan.Heading heading = job.results().plan().heading();
    PdfMetadata metadata =
        new PdfMetadata(
            title,
            heading.author(),
            job.results().fold(r -> r.main().session().vehicle(), LibraryPage::sessions),
            job.program(),
            job.date());
    Checked<byte[]> pdf =
        new PdfPage(job.figures(), template, job.templates().isBuiltIn())
            .bytes(page, metadata, attachments);
    pdf.value().ifPresent(bytes -> files.put(file, bytes));
    return pdf;
  }

  /**
   * Adds the data and the package that describes them; returns what the PDF attaches. The numbers
   * of a large library need more memory than its rows: they are streamed, and not attached.
   */
  private List<PdfAttachment> data(ReportPages pages) {
    NumbersJson json = new NumbersJson(job.results(), job.inputs());
    NumbersCsv csv = new NumbersCsv(job.results());
    InputHash rows;
    List<PdfAttachment> attachments = List.of();
    if (job.results().isLarge()) {
      files.put("numbers.json", json);
      files.put("numbers.csv", csv);
      rows = csv.hash("numbers.csv");
    } else {
      byte[] numbers = json.bytes();
      files.put("numbers.json", numbers);
      attachments = attachments(numbers);
      byte[] table = csv.bytes();
      files.put("numbers.csv", table);
      rows = InputFile.wrap("numbers.csv", table).withoutContent();
    }
    DataPackage described = new DataPackage(job.results().plan(), job.date(), job.tables());
    described.numbers(csv, rows);
    if (job.results() instanceof ReportResult report) {
      share(report, pages, described);
    }
    if (!job.corrections().isEmpty()) {
      byte[] corrections = CorrectionsCsv.bytes(job.corrections());
      files.put("corrections.csv", corrections);
      described.corrections(corrections);
    }
    described.files().forEach(files::put);
    return attachments;
  }

  /** Adds what a session's report has for films and for use elsewhere. */
  private void share(ReportResult report, ReportPages pages, DataPackage described) {
    files.put("share/summary.md", pages.summary());
    ShareTable table = pages.shareTable();
    if (!table.isEmpty()) {
      files.put("share/table.html", table.html());
      files.put("share/table.csv", table.csv());
      described.milestones(table.csv(), table.columns(), table.cells());
    }
    files.put("film/script.md", new FilmScript(report, job.date()).bytes());
    Captions captions = new Captions(report);
    if (!captions.isEmpty()) {
      files.put("share/captions.srt", captions.srt());
      files.put("share/captions.vtt", captions.vtt());
    }
  }

  /**
   * Returns the inputs, the built-in templates of a session's report (so that a later version can
   * find them) and the numbers.
   */
  private List<PdfAttachment> attachments(byte[] numbers) {
    Map<String, PdfAttachment> attachments = new LinkedHashMap<>();
    job.attached()
        .forEach(i -> attachments.put(i.path(), new PdfAttachment(i.path(), i.content())));
    if (job.results() instanceof ReportResult) {
      job.templates()
          .texts()
          .forEach(
              (name, text) ->
                  attachments.computeIfAbsent(
                      "templates/" + name,
                      path -> new PdfAttachment(path, text.getBytes(StandardCharsets.UTF_8))));
    }
    attachments.put("numbers.json", new PdfAttachment("numbers.json", numbers));
    return List.copyOf(attachments.values());
  }
}
