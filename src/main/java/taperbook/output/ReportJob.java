package taperbook.output;

import java.time.LocalDate;
import java.util.List;
import taperbook.chart.render.Figure;
import taperbook.result.Correction;
import taperbook.result.Results;
import taperbook.session.InputFile;
import taperbook.session.InputHash;
import taperbook.session.InputTable;

/**
 * The inputs for the files of one report or library.
 *
 * @param results the results
 * @param figures the charts, in display order
 * @param templates the texts of the templates
 * @param inputs every input file, including user templates
 * @param attached the same files with their content, to be attached to the PDF; empty if too large
 * @param tables the attached tables of sessions and range tests, loaded one at a time
 * @param corrections the corrections since publication, in order
 * @param date date of the files
 * @param program name and version of the program
 */
public record ReportJob(
    Results results,
    List<Figure> figures,
    Templates templates,
    List<InputHash> inputs,
    List<InputFile> attached,
    Iterable<InputTable> tables,
    List<Correction> corrections,
    LocalDate date,
    String program) {
  /** Maximum number of bytes of input to attach to the PDF of a library. */
  public static final long MOST_ATTACHED_BYTES = 20_000_000;

  public ReportJob {
    figures = List.copyOf(figures);
    inputs = List.copyOf(inputs);
    attached = List.copyOf(attached);
    corrections = List.copyOf(corrections);
  }
}
