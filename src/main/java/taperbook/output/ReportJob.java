package taperbook.output;

import java.time.LocalDate;
import java.util.List;
import taperbook.chart.render.Figure;
import taperbook.result.Correction;
import taperbook.result.ReportResult;
import taperbook.session.InputFile;
import taperbook.session.InputTable;

/**
 * The inputs for the files of one report.
 *
 * @param result the results
 * @param figures the charts, in display order
 * @param templates the texts of the templates
 * @param inputs every input file of the report, including user templates
 * @param tables the tables of sessions and range tests among them, loaded one at a time
 * @param corrections the corrections since publication, in order
 * @param date date of the files
 * @param program name and version of the program
 */
public record ReportJob(
    ReportResult result,
    List<Figure> figures,
    Templates templates,
    List<InputFile> inputs,
    Iterable<InputTable> tables,
    List<Correction> corrections,
    LocalDate date,
    String program) {
  public ReportJob {
    figures = List.copyOf(figures);
    inputs = List.copyOf(inputs);
    corrections = List.copyOf(corrections);
  }

  /** Creates the job of a report without corrections, published without its tables. */
  public ReportJob(
      ReportResult result,
      List<Figure> figures,
      Templates templates,
      List<InputFile> inputs,
      LocalDate date,
      String program) {
    this(result, figures, templates, inputs, List.of(), List.of(), date, program);
  }
}
