package taperbook.output;

import taperbook.diagnostics.Checked;
import taperbook.output.share.ShareTable;
import taperbook.output.share.SummaryText;

/** The outputs of the templates of a report, each rendered on request. */
final class TemplateTexts {
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
    return new SummaryText(model.common(), model.summary()).bytes();
  }

  /** Returns the table to embed elsewhere. */
  ShareTable shareTable() {
    return new ShareTable(model.common());
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
