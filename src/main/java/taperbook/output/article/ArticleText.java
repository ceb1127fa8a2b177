package taperbook.output.article;

import freemarker.core.PlainTextOutputFormat;
import freemarker.core._CoreAPI;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import java.io.IOException;
import java.io.StringReader;
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
  public Checked<String> answer(ReportResult result) {
    ReportPlan.Article text =
        result
            .plan()
            .heading()
            .answer()
            .orElseGet(
                () ->
                    new ReportPlan.Article(
                        ArticleFunctions.escaped(new AnswerText(result).text()), "", 1));
    return new ArticleText(source.with(text), Set.of())
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
                ArticleMarkdown.Converted converted = ArticleMarkdown.converted(markdown, figures);
                parts.addAll(converted.parts());
                converted.pictures().forEach(p -> problems.add(leftOut(p)));
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

  private Problem leftOut(ArticleMarkdown.Picture picture) {
    return new Problem(
        ProblemCode.PICTURE_LEFT_OUT,
        SourceLocation.line(source.article().file(), source.article().firstLine() + picture.line()),
        Quoted.of(picture.written()),
        Texts.of("article.article_text.text_and_charts_of_picture"),
        Texts.of("article.article_text.call_chart_with_figure_name"));
  }

  private Checked<String> filled() {
    ReportPlan.Article article = source.article();
    Configuration configuration = RestrictedTemplates.restricted();
    configuration.setOutputFormat(PlainTextOutputFormat.INSTANCE);
    ArticleFunctions functions = new ArticleFunctions(source, figures);
    return RestrictedTemplates.filled(
        () -> {
          Template template =
              new Template(article.file(), new StringReader(article.markdown()), configuration);
          _CoreAPI.addThreadInterruptedChecks(template);
          return template;
        },
        functions.model(),
        functions.problems(),
        (template, line, column, message) ->
            broken(ArticleFunctions.place(article, line, column), message));
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
