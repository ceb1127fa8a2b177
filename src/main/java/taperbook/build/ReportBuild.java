package taperbook.build;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import taperbook.cli.ProgressListener;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.output.ReportFiles;
import taperbook.plan.Plan;
import taperbook.prosecheck.ArticleFigures;

/** A report that is ready to be built: its dependencies, and how to build it. */
public interface ReportBuild {
  /** Returns a hash of everything that the report depends on at present. */
  String fingerprint();

  /**
   * Returns the paths that the fingerprint depends on, including folders that are listed; empty if
   * paths do not determine it.
   */
  List<String> paths();

  /**
   * Builds the report, or returns all problems.
   *
   * @param steps receives progress
   */
  default Checked<Made> make(ProgressListener steps) {
    return make(steps, page -> {});
  }

  /**
   * Builds the report as {@link #make(ProgressListener)} does.
   *
   * @param firstPage receives {@code report.html} as soon as it is complete, on another thread,
   *     while other files may still be refused
   */
  Checked<Made> make(ProgressListener steps, Consumer<byte[]> firstPage);

  /** Returns what it asks for. */
  Plan plan();

  /**
   * Checks the report as if it were built, without keeping anything.
   *
   * @param steps receives progress
   */
  Findings findings(ProgressListener steps);

  /**
   * Result of checking a report.
   *
   * @param problems all problems
   * @param figures the figures typed by hand in the article, if there are results to compare them
   *     with
   */
  record Findings(List<Problem> problems, Optional<ArticleFigures> figures) {
    public Findings {
      problems = List.copyOf(problems);
    }
  }

  /**
   * A report that was built.
   *
   * @param files its files
   * @param fingerprint hash of everything that it was actually built from
   * @param problems problems that did not prevent the build, including errors
   * @param summary what the tester should see without opening the report
   * @param headline the numbers at its top
   */
  record Made(
      ReportFiles files,
      String fingerprint,
      List<Problem> problems,
      List<String> summary,
      List<Printed> headline) {
    public Made {
      problems = List.copyOf(problems);
      summary = List.copyOf(summary);
      headline = List.copyOf(headline);
    }
  }

  /**
   * A number as a report prints it.
   *
   * @param label its name
   * @param value its value with its unit
   * @param intervals the possible printed forms of its interval
   */
  record Printed(String label, String value, List<String> intervals) {
    public Printed {
      intervals = List.copyOf(intervals);
    }
  }
}
