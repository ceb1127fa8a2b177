package taperbook.output;

import taperbook.diagnostics.Checked;
import taperbook.output.share.ShareTable;
import taperbook.output.share.SummaryText;

/** The texts that the templates of a report give, each made when it is asked for. */
final class TemplateTexts {
  private final String template;
  private final TemplateModel model;
  private final Templates templates;

  /**
   * Texts.
   *
   * @param template file name of the report's template
   */
  TemplateTexts(Templates templates, String template, TemplateModel model) {
    this.template = template;
    this.model = model;
    this.templates = templates;
  }

  /** File name of the report's template. */
  String template() {
    return template;
  }

  /** The page for browsers. */
  Checked<String> screen() {
    return templates.page(template, model.screen());
  }

  /** The page for paper. */
  Checked<String> print() {
    return templates.page(template, model.print());
  }

  /** What {@code share/summary.md} says. */
  byte[] summary() {
    return new SummaryText(model.common(), model.summary()).bytes();
  }

  /** The table to be put elsewhere. */
  ShareTable shareTable() {
    return new ShareTable(model.common());
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
