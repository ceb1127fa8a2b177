package taperbook.output;

import java.util.List;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.SourceLocation;
import taperbook.i18n.Texts;
import taperbook.plan.Plan;

/** Finds the template that a report names in its front matter. */
final class TemplateChoice {
  private TemplateChoice() {}

  /** Returns the file name of the template, or the problem that there is none. */
  static Checked<String> of(Plan plan, Templates templates) {
    String asked = plan.style().template();
    String name = Templates.fileName(asked);
    if (templates.reportNames().contains(Templates.stem(asked))) {
      return Checked.good(name);
    }
    return Checked.refused(
        List.of(
            new Problem(
                ProblemCode.NAME_UNKNOWN,
                SourceLocation.file(plan.article().file()),
                Texts.of("page.template_choice.template", asked),
                Texts.of("page.template_choice.name_of_template"),
                Texts.of(
                    "page.template_choice.name_one_of_or_write",
                    String.join(", ", templates.reportNames()),
                    name))));
  }
}
