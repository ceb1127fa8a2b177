package taperbook.workspace;

import java.util.List;
import taperbook.plan.ReportPlan;
import taperbook.session.InputFile;

/**
 * The files that a report is made from, read but not yet understood beyond its front matter.
 *
 * @param plan what the report asks for
 * @param files every file it is made from, its own text first
 */
public record ReportSources(ReportPlan plan, List<InputFile> files) {
  public ReportSources {
    files = List.copyOf(files);
  }
}
