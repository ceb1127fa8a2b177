package taperbook.output;

import java.time.LocalDate;
import java.util.List;
import taperbook.chart.render.Figure;
import taperbook.result.LibraryResult;
import taperbook.session.InputFile;
import taperbook.session.InputHash;
import taperbook.session.InputTable;

/**
 * All that goes into the files of one library.
 *
 * @param result what was measured
 * @param figures the charts, in the order they should be shown
 * @param templates the texts of the templates
 * @param inputs every file that the library was made from, templates of the user's included
 * @param attached the same files with their content, to be carried by the PDF; empty if they are
 *     too large for that
 * @param tables those of the attached that are tables of sessions and range tests, one at a time
 * @param made the day that the files bear as their date
 * @param program name and version of the program
 */
public record LibraryJob(
    LibraryResult result,
    List<Figure> figures,
    Templates templates,
    List<InputHash> inputs,
    List<InputFile> attached,
    Iterable<InputTable> tables,
    LocalDate made,
    String program) {
  /** The most bytes of input that the PDF of a library carries. */
  public static final long MOST_ATTACHED_BYTES = 20_000_000;

  /** Copies the lists. */
  public LibraryJob {
    figures = List.copyOf(figures);
    inputs = List.copyOf(inputs);
    attached = List.copyOf(attached);
  }
}
