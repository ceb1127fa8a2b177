package taperbook.input.mapping;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A proposed row of {@code columns.csv}.
 *
 * @param item the assumed channel of the column
 * @param index index of the column from 0
 * @param unit its unit
 * @param factor factor; empty for none
 * @param offset offset; empty for none
 * @param format format; empty for none
 * @param points score of the assumption
 */
record ProposedRow(
    String item, int index, String unit, String factor, String offset, String format, int points) {
  static ProposedRow of(String item, int index, String unit, int points) {
    return new ProposedRow(item, index, unit, "", "", "", points);
  }

  ProposedRow withFactor(String other) {
    return new ProposedRow(item, index, unit, other, offset, format, points);
  }

  ProposedRow withOffset(String other) {
    return new ProposedRow(item, index, unit, factor, other, format, points);
  }

  ProposedRow withFormat(String other) {
    return new ProposedRow(item, index, unit, factor, offset, other, points);
  }

  /** Returns the row as text. */
  String text(String source, Set<String> marks) {
    List<String> cells =
        new ArrayList<>(
            List.of(item, source, unit, factor, offset, format, String.join(" | ", marks)));
    while (cells.get(cells.size() - 1).isEmpty()) {
      cells.remove(cells.size() - 1);
    }
    return String.join(",", cells.stream().map(ProposedRow::quoted).toList());
  }

  private static String quoted(String cell) {
    return cell.matches("[^\",\n]*") ? cell : "\"" + cell.replace("\"", "\"\"") + "\"";
  }
}
