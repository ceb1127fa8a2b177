package taperbook.write;

import java.util.List;
import java.util.Map;
import taperbook.problem.Checked;
import taperbook.write.text.ArticlePart;
import taperbook.write.text.RestrictedTemplates;

/** The texts that the templates of a report give, each made when it is asked for. */
final class PageTexts {
  private static final String METHODS = "methods.ftlh";

  private final String template;
  private final TemplateModel model;
  private final RestrictedTemplates templates;

  /**
   * Texts.
   *
   * @param template file name of the report's template
   * @param article what stands in them as the tester's account
   */
  PageTexts(WriteJob job, String template, List<ArticlePart> article) {
    this.template = template;
    this.model = new TemplateModel(job, article);
    this.templates = job.templates().pages();
  }

  /** The page for browsers. */
  Checked<String> screen() {
    return page(template, model.screen());
  }

  /** The page for paper. */
  Checked<String> print() {
    return page(template, model.print());
  }

  /**
   * The methods appendix.
   *
   * @param sha256 hash of the report's PDF, which it belongs to; empty as long as there is none
   */
  Checked<String> methods(String sha256) {
    return page(METHODS, model.methods(sha256));
  }

  private Checked<String> page(String name, Map<String, Object> shown) {
    return templates.page(name, shown).then(text -> Checked.good(WholeUnits.kept(text)));
  }
}
