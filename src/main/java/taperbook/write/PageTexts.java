package taperbook.write;

import java.util.List;
import taperbook.problem.Checked;
import taperbook.write.text.ArticlePart;

/** The texts that the templates of a report give, each made when it is asked for. */
final class PageTexts {
  private final String template;
  private final TemplateModel model;
  private final Templates templates;

  /**
   * Texts.
   *
   * @param template file name of the report's template
   * @param article what stands in them as the tester's account
   */
  PageTexts(WriteJob job, String template, List<ArticlePart> article) {
    this.template = template;
    this.model = new TemplateModel(job, article);
    this.templates = job.templates();
  }

  /** The page for browsers. */
  Checked<String> screen() {
    return templates.page(template, model.screen());
  }

  /** The page for paper. */
  Checked<String> print() {
    return templates.page(template, model.print());
  }

  /**
   * The methods appendix.
   *
   * @param sha256 hash of the report's PDF, which it belongs to; empty as long as there is none
   */
  Checked<String> methods(String sha256) {
    return templates.page(Templates.METHODS, model.methods(sha256));
  }
}
