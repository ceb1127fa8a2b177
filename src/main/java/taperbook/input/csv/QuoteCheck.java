package taperbook.input.csv;

import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;

/**
 * Checks that quotes conform to RFC 4180: around a whole cell, doubled inside it. Commons CSV
 * accepts a quote inside an unquoted cell, and would split such a cell silently.
 *
 * @see <a href="https://www.rfc-editor.org/rfc/rfc4180#section-2">RFC 4180, section 2, rules 5 to
 *     7</a>
 */
final class QuoteCheck {
  private enum State {
    CELL_START,
    UNQUOTED,
    QUOTED,
    CLOSED,
    REPORTED
  }

  private static final String REMEDY =
      "put the whole cell between double quotes and double those inside it";

  private final String text;
  private final char delimiter;
  private final ProblemLog log;
  private State state = State.CELL_START;
  private int line = 1;
  private int cell = 1;
  private int openLine;
  private int openCell;

  private QuoteCheck(String text, char delimiter, ProblemLog log) {
    this.text = text;
    this.delimiter = delimiter;
    this.log = log;
  }

  static void check(String text, char delimiter, ProblemLog log) {
    new QuoteCheck(text, delimiter, log).walk();
  }

  private void walk() {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (state == State.QUOTED) {
        if (c == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"') {
          i++;
        } else if (c == '"') {
          state = State.CLOSED;
        }
      } else {
        outsideQuotes(c);
      }
      if (LineCounter.endsLine(text, i)) {
        line++;
      }
    }
    if (state == State.QUOTED) {
      report(openLine, openCell, "a quote that opens here and never closes");
    }
  }

  private void outsideQuotes(char c) {
    if (c == delimiter) {
      state = State.CELL_START;
      cell++;
    } else if (LineCounter.isLineEnd(c)) {
      state = State.CELL_START;
      cell = 1;
    } else if (state == State.CLOSED) {
      report(line, cell, "text after a closing quote");
      state = State.REPORTED;
    } else if (c == '"' && state == State.CELL_START) {
      state = State.QUOTED;
      openLine = line;
      openCell = cell;
    } else if (c == '"' && state == State.UNQUOTED) {
      report(line, cell, "a quote inside a cell that does not begin with one");
      state = State.REPORTED;
    } else if (state == State.CELL_START) {
      state = State.UNQUOTED;
    }
  }

  private void report(int atLine, int atCell, String found) {
    log.add(
        ProblemCode.CSV_BROKEN, atLine, atCell, found, "quotes around whole cells only", REMEDY);
  }
}
