package taperbook.build;

import java.util.List;
import java.util.Optional;
import taperbook.cli.ProgressListener;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.format.NumberFormatter;
import taperbook.output.ReportFiles;
import taperbook.prosecheck.ArticleFigures;

/** A report that can be made: what it depends on, and how it is made. */
public interface ReportBuild {
  /** One hash over all that the report would be made from now. */
  String fingerprint();

  /**
   * Paths of everything that the fingerprint is found from, folders that are listed among it; none
   * if it cannot be told by paths.
   */
  List<String> paths();

  /**
   * The report, or every problem on the way.
   *
   * @param steps hears how far it has come
   */
  Checked<Made> make(ProgressListener steps);

  /** Words for its numbers. */
  NumberFormatter wording();

  /** What making the report would meet; nothing is kept. */
  Findings findings();

  /**
   * What making a report would meet.
   *
   * @param problems every problem
   * @param figures the figures typed by hand in the article, if there are results to hold them
   *     against
   */
  record Findings(List<Problem> problems, Optional<ArticleFigures> figures) {
    /** Copies the list. */
    public Findings {
      problems = List.copyOf(problems);
    }
  }

  /**
   * A report that was made.
   *
   * @param files its files
   * @param fingerprint hash over all that it was really made from
   * @param told problems that did not keep it from being made, errors among them
   * @param summary what the tester should see without opening it
   * @param headline the numbers at its head
   */
  record Made(
      ReportFiles files,
      String fingerprint,
      List<Problem> told,
      List<String> summary,
      List<Printed> headline) {
    /** Copies the lists. */
    public Made {
      told = List.copyOf(told);
      summary = List.copyOf(summary);
      headline = List.copyOf(headline);
    }
  }

  /**
   * A number as a report prints it.
   *
   * @param label its name
   * @param value its value with its unit
   * @param intervals the ways in which its interval may be printed
   */
  record Printed(String label, String value, List<String> intervals) {
    /** Copies the list. */
    public Printed {
      intervals = List.copyOf(intervals);
    }
  }
}
