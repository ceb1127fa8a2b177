package taperbook.app;

import java.util.List;
import taperbook.problem.Checked;
import taperbook.problem.Problem;
import taperbook.write.ReportFiles;

/** A report that can be made: what it depends on, and how it is made. */
interface Making {
  /** One hash over all that the report would be made from now. */
  String fingerprint();

  /** The report, or every problem on the way. */
  Checked<Made> make();

  /** Every problem that making the report would meet; nothing is kept. */
  List<Problem> problems();

  /**
   * A report that was made.
   *
   * @param files its files
   * @param fingerprint hash over all that it was really made from
   * @param told problems that did not keep it from being made, errors among them
   * @param summary what the tester should see without opening it
   */
  record Made(ReportFiles files, String fingerprint, List<Problem> told, List<String> summary) {
    /** Copies the lists. */
    public Made {
      told = List.copyOf(told);
      summary = List.copyOf(summary);
    }
  }
}
