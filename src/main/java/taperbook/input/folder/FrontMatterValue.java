package taperbook.input.folder;

import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;

/**
 * A value of the front matter, with its location.
 *
 * @param text the text without surrounding spaces and quotes, not empty
 * @param line line number from 1
 * @param column number of its first character in the line, from 1
 */
public record FrontMatterValue(String text, int line, int column) {
  /** Reports that the value is not what is expected. */
  public void refuse(ProblemLog log, ProblemCode code, String expected, String remedy) {
    report(log, code, Quoted.of(text), expected, remedy);
  }

  /** Reports a problem at the value. */
  public void report(
      ProblemLog log, ProblemCode code, String found, String expected, String remedy) {
    log.add(code, line, column, found, expected, remedy);
  }
}
