package taperbook.output;

import java.time.LocalDate;
import java.util.List;
import taperbook.chart.render.Figure;
import taperbook.result.LibraryResult;
import taperbook.session.InputFile;
import taperbook.session.InputHash;
import taperbook.session.InputTable;

/**
 * The inputs for the files of one library.
 *
 * @param result the results
 * @param figures the charts, in display order
 * @param templates the texts of the templates
 * @param inputs every input file of the library, including user templates
 * @param attached the same files with their content, to be attached to the PDF; empty if too large
 * @param tables the attached tables of sessions and range tests, loaded one at a time
 * @param date date of the files
 * @param program name and version of the program
 */
public record LibraryJob(
    LibraryResult result,
    List<Figure> figures,
    Templates templates,
    List<InputHash> inputs,
    List<InputFile> attached,
    Iterable<InputTable> tables,
    LocalDate date,
    String program) {
  /** Maximum number of bytes of input to attach to the PDF of a library. */
  public static final long MOST_ATTACHED_BYTES = 20_000_000;

  public LibraryJob {
    figures = List.copyOf(figures);
    inputs = List.copyOf(inputs);
    attached = List.copyOf(attached);
  }
}
