package taperbook.output;

import java.time.LocalDate;
import java.util.List;
import taperbook.chart.render.Figure;
import taperbook.result.Correction;
import taperbook.result.ReportResult;
import taperbook.session.InputFile;
import taperbook.session.InputTable;

/**
 * All that goes into the files of one report.
 *
 * @param result what was measured
 * @param figures the charts, in the order they should be shown
 * @param templates the texts of the templates
 * @param inputs every file that the report was made from, templates of the user's included
 * @param tables those of them that are tables of sessions and range tests, one at a time
 * @param corrections what was put right since the report was published, in order
 * @param made the day that the files bear as their date
 * @param program name and version of the program
 */
public record ReportJob(
    ReportResult result,
    List<Figure> figures,
    Templates templates,
    List<InputFile> inputs,
    Iterable<InputTable> tables,
    List<Correction> corrections,
    LocalDate made,
    String program) {
  /** Copies the lists. */
  public ReportJob {
    figures = List.copyOf(figures);
    inputs = List.copyOf(inputs);
    corrections = List.copyOf(corrections);
  }

  /** A report that was never corrected, published without its tables. */
  public ReportJob(
      ReportResult result,
      List<Figure> figures,
      Templates templates,
      List<InputFile> inputs,
      LocalDate made,
      String program) {
    this(result, figures, templates, inputs, List.of(), List.of(), made, program);
  }
}
