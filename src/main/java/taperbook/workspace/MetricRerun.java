package taperbook.workspace;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import taperbook.result.MovedNumber;
import taperbook.session.InputFile;
import taperbook.verify.NumbersFile;

/** Measures a report again, from other files or with other draws. */
public interface MetricRerun {
  /**
   * The numbers, on the windows of the version that is made; empty if the files do not make a
   * report.
   *
   * @param files the files to measure, by path
   * @param redraw which other draws to take; 0 are those of a report
   */
  Optional<NumbersFile> numbers(Map<String, InputFile> files, int redraw);

  /** True if files ask for the same numbers of the same sessions, whatever else their texts say. */
  boolean askAlike(Map<String, InputFile> one, Map<String, InputFile> other);

  /** True if a number is printed as it was. */
  boolean isPrintedAlike(MovedNumber number);

  /** The numbers for each of these draws that there are. */
  default List<NumbersFile> redrawn(Map<String, InputFile> files, int from, int to) {
    return IntStream.rangeClosed(from, to)
        .mapToObj(k -> numbers(files, k))
        .flatMap(Optional::stream)
        .toList();
  }
}
