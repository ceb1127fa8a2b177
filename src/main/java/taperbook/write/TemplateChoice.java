package taperbook.write;

import java.util.List;
import taperbook.model.Plan;
import taperbook.problem.Checked;
import taperbook.problem.Problem;
import taperbook.problem.ProblemCode;
import taperbook.problem.SourcePlace;

/** Finds the template that a report names in its front matter. */
final class TemplateChoice {
  private static final String ENDING = ".ftlh";

  /** What other templates import; no report can be made with them alone. */
  private static final List<String> PARTS = List.of("parts.ftlh", "road.ftlh");

  private TemplateChoice() {}

  /** File name of the template, or the problem that there is none. */
  static Checked<String> of(Plan plan, Templates templates) {
    String asked = plan.style().template();
    String name = asked.endsWith(ENDING) ? asked : asked + ENDING;
    if (templates.texts().containsKey(name)) {
      return Checked.good(name);
    }
    List<String> known =
        templates.texts().keySet().stream()
            .filter(n -> n.endsWith(ENDING) && !PARTS.contains(n))
            .map(n -> n.substring(0, n.length() - ENDING.length()))
            .toList();
    return Checked.refused(
        List.of(
            new Problem(
                ProblemCode.NAME_UNKNOWN,
                SourcePlace.file(plan.article().file()),
                "template \u201c" + asked + "\u201d",
                "the name of a template",
                "name one of " + String.join(", ", known) + ", or write templates/" + name)));
  }
}
