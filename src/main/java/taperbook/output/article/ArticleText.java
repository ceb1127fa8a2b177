package taperbook.output.article;

import freemarker.core.ParseException;
import freemarker.core.PlainTextOutputFormat;
import freemarker.core._CoreAPI;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.Quoted;
import taperbook.diagnostics.SourceLocation;
import taperbook.format.AnswerText;
import taperbook.i18n.Texts;
import taperbook.plan.ReportPlan;
import taperbook.result.ReportResult;
import taperbook.result.Results;

/** Fills the numbers into the tester's article and converts its Markdown to safe HTML. */
public final class ArticleText {
  private final ArticleSource source;
  private final Set<String> figures;

  /**
   * Creates the article of a report or library.
   *
   * @param figures names of its charts
   */
  public ArticleText(Results results, Set<String> figures) {
    this(ArticleSource.of(results, figures), figures);
  }

  private ArticleText(ArticleSource source, Set<String> figures) {
    this.source = source;
    this.figures = Set.copyOf(figures);
  }

  /**
   * Returns the answer at the top of a report in HTML, generated or as written by the tester, or
   * every problem in it.
   */
  public static Checked<String> answer(ReportResult result) {
    ReportPlan.Article text =
        result
            .plan()
            .heading()
            .answer()
            .orElseGet(
                () ->
                    new ReportPlan.Article(
                        ArticleFunctions.escaped(new AnswerText(result).text()), "", 1));
    return new ArticleText(ArticleSource.of(result, Set.of()).with(text), Set.of())
        .parts()
        .then(
            parts ->
                Checked.good(parts.stream().map(ArticlePart::html).collect(Collectors.joining())));
  }

  /** Returns the parts of the article in order, or every problem in it. */
  public Checked<List<ArticlePart>> parts() {
    return filled().then(this::converted);
  }

  private Checked<List<ArticlePart>> converted(String markdown) {
    List<ArticlePart> parts = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    try {
      Optional<String> failed =
          BoundedRun.run(
              () -> {
                parts.addAll(ArticleMarkdown.parts(markdown, figures));
                problems.addAll(pictures(markdown));
              });
      return failed.isPresent() ? tooDeep() : Checked.of(parts, problems);
    } catch (ArticleMarkdown.TooDeep e) {
      return tooDeep();
    } catch (IOException | TemplateException e) {
      throw new IllegalStateException("Markdown is neither read nor carried out", e);
    }
  }

  private Checked<List<ArticlePart>> tooDeep() {
    return Checked.refused(
        List.of(
            new Problem(
                ProblemCode.TEMPLATE_BROKEN,
                SourceLocation.file(source.article().file()),
                Texts.of("article.article_text.rows_of_signs_such_as"),
                Texts.of(
                    "article.article_text.at_most_levels_of_quotations",
                    ArticleMarkdown.MOST_LEVELS),
                Texts.of("article.article_text.take_out_those_rows_of"))));
  }

  /** Returns the Markdown placeholder of a chart. */
  static String token(String figure) {
    return "\u2063chart:" + figure + "\u2063";
  }

  private List<Problem> pictures(String markdown) {
    ReportPlan.Article article = source.article();
    return ArticleMarkdown.pictures(markdown).stream()
        .map(
            p ->
                new Problem(
                    ProblemCode.PICTURE_LEFT_OUT,
                    SourceLocation.line(article.file(), article.firstLine() + p.line()),
                    Quoted.of(p.written()),
                    Texts.of("article.article_text.text_and_charts_of_picture"),
                    Texts.of("article.article_text.call_chart_with_figure_name")))
        .toList();
  }

  private Checked<String> filled() {
    ReportPlan.Article article = source.article();
    Configuration configuration = RestrictedTemplates.restricted();
    configuration.setOutputFormat(PlainTextOutputFormat.INSTANCE);
    ArticleFunctions functions = new ArticleFunctions(source, figures);
    BoundedText out = new BoundedText();
    try {
      Optional<Template> parsed = parsed(configuration);
      if (parsed.isEmpty()) {
        return Checked.refused(
            List.of(broken(SourceLocation.file(article.file()), BoundedRun.TOO_DEEP)));
      }
      Template template = parsed.get();
      var environment = template.createProcessingEnvironment(functions.model(), out);
      environment.setTemplateExceptionHandler(
          (failure, where, writer) ->
              RestrictedTemplates.keep(functions.problems(), problem(article, failure), failure));
      _CoreAPI.addThreadInterruptedChecks(template);
      Optional<String> endless = BoundedRun.run(environment::process);
      if (endless.isPresent()) {
        return Checked.refused(List.of(broken(SourceLocation.file(article.file()), endless.get())));
      }
    } catch (ParseException e) {
      SourceLocation place =
          ArticleFunctions.place(article, e.getLineNumber(), e.getColumnNumber());
      return Checked.refused(List.of(broken(place, e.getEditorMessage())));
    } catch (TemplateException e) {
      functions.problems().add(problem(article, e));
    } catch (BoundedText.TooLong e) {
      functions.problems().add(broken(SourceLocation.file(article.file()), e.words()));
    } catch (IOException e) {
      throw new UncheckedIOException(article.file(), e);
    }
    List<Problem> problems = new ArrayList<>(functions.problems());
    return Checked.of(out.toString(), problems.stream().distinct().toList());
  }

  private Optional<Template> parsed(Configuration configuration)
      throws IOException, TemplateException {
    ReportPlan.Article article = source.article();
    return BoundedRun.parsed(
        () -> new Template(article.file(), new StringReader(article.markdown()), configuration));
  }

  private static Problem problem(ReportPlan.Article article, TemplateException failure) {
    return broken(
        ArticleFunctions.place(article, failure.getLineNumber(), failure.getColumnNumber()),
        failure.getMessageWithoutStackTop());
  }

  private static Problem broken(SourceLocation place, String message) {
    return new Problem(
        ProblemCode.TEMPLATE_BROKEN,
        place,
        Texts.of(
            "article.common.instruction_that_cannot_be_carried",
            RestrictedTemplates.shortened(message)),
        Texts.of("article.article_text.text_or_call_such_as"),
        Texts.of("article.article_text.correct_instruction_plain_is_written"));
  }
}
