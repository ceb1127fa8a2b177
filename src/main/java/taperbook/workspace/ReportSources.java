package taperbook.workspace;

import java.util.List;
import taperbook.plan.ReportPlan;
import taperbook.session.InputFile;

/**
 * The source files of a report; only the front matter has been parsed.
 *
 * @param plan the report's plan
 * @param files all files that it is built from, its own text first
 */
public record ReportSources(ReportPlan plan, List<InputFile> files) {
  public ReportSources {
    files = List.copyOf(files);
  }
}
