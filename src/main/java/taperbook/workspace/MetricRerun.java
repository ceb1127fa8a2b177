package taperbook.workspace;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import taperbook.result.MovedNumber;
import taperbook.session.InputFile;
import taperbook.verify.NumbersFile;

/** Recomputes the numbers of a report, from other files or with other draws. */
public interface MetricRerun {
  /**
   * Returns the numbers, on the windows of the current version; empty if the files do not form a
   * valid report.
   *
   * @param files the files to measure, by path
   * @param redraw index of the set of draws; 0 for the draws of a report
   */
  Optional<NumbersFile> numbers(Map<String, InputFile> files, int redraw);

  /**
   * Returns true if both sets of files request the same numbers of the same sessions, regardless of
   * their other text.
   */
  boolean requestSameNumbers(Map<String, InputFile> one, Map<String, InputFile> other);

  /** Returns true if the printed form of a number is unchanged. */
  boolean isPrintedAlike(MovedNumber number);

  /** Returns the numbers for each of these sets of draws for which there are any. */
  default List<NumbersFile> redrawn(Map<String, InputFile> files, int from, int to) {
    return IntStream.rangeClosed(from, to)
        .mapToObj(k -> numbers(files, k))
        .flatMap(Optional::stream)
        .toList();
  }
}
