package taperbook.input.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.input.cell.Column;
import taperbook.input.csv.CsvRow;
import taperbook.session.Channel;
import taperbook.session.Review;
import taperbook.session.RowRef;

/**
 * The column in which a tester states whether readings were confirmed when rechecked: {@code
 * confirmed} or {@code doubtful}, for the whole row or for the columns that follow, such as {@code
 * doubtful power and soc}.
 */
final class AsReadColumn {
  private static final String CONFIRMED = "confirmed";
  private static final String DOUBTFUL = "doubtful";
  private static final Pattern BETWEEN = Pattern.compile("\\s*(?:,|;|\\band\\b)\\s*");

  private final Column column;
  private final String file;
  private final ProblemLog log;
  private final List<Review.AsRead> stated = new ArrayList<>();

  AsReadColumn(Column column, String file, ProblemLog log) {
    this.column = column;
    this.file = file;
    this.log = log;
  }

  /** Returns the statements so far. */
  List<Review.AsRead> stated() {
    return stated;
  }

  /** Returns the channels of a row to leave out, and records its statement. */
  Set<Channel> doubtful(CsvRow row, List<ChannelColumn> channels) {
    if (column.isBlankIn(row)) {
      return Set.of();
    }
    String cell = row.cell(column.index()).strip();
    boolean confirmed = cell.startsWith(CONFIRMED);
    if (!confirmed && !cell.startsWith(DOUBTFUL)) {
      report(row, cell, "correct it, or leave the cell empty");
      return Set.of();
    }
    String names = cell.substring((confirmed ? CONFIRMED : DOUBTFUL).length()).strip();
    Set<Channel> named = EnumSet.noneOf(Channel.class);
    List<String> written = names.isEmpty() ? List.of() : Arrays.asList(BETWEEN.split(names));
    for (ChannelColumn channel : channels) {
      if (!channel.isBlankIn(row)
          && (names.isEmpty() || written.contains(channel.channel().columnName()))) {
        named.add(channel.channel());
      }
    }
    Optional<String> stray =
        written.stream()
            .filter(w -> named.stream().noneMatch(c -> c.columnName().equals(w)))
            .findFirst();
    if (stray.isPresent()) {
      report(
          row,
          cell,
          "name columns that have a reading in this row; " + Quoted.of(stray.get()) + " is none");
      return Set.of();
    }
    if (!named.isEmpty()) {
      stated.add(new Review.AsRead(new RowRef(file, row.line()), List.copyOf(named), confirmed));
    }
    return confirmed ? Set.of() : named;
  }

  private void report(CsvRow row, String cell, String remedy) {
    log.add(
        ProblemCode.AS_READ_NOT_UNDERSTOOD,
        row.line(),
        column.number(),
        Quoted.of(cell),
        "\"confirmed\" or \"doubtful\", alone for all readings of the row, or with the names of"
            + " columns, such as \"doubtful power and soc\"",
        remedy);
  }
}
