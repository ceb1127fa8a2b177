package taperbook.input.mapping;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import taperbook.input.csv.CsvTable;

/**
 * Observed properties of an external column: the words of its header, its numbers, and its other
 * cells.
 */
final class ForeignColumn {
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?[0-9]*[.,]?[0-9]+(?:[eE][+-]?[0-9]+)?");

  /** Numbers that programs write for missing values; common practice, no source. */
  private static final Set<String> SENTINELS = Set.of("-9999", "-999", "-9999.0", "-999.0");

  private static final int MAX_MARKS = 4;

  private final int index;
  private final String head;
  private final List<String> texts = new ArrayList<>();
  private final double[] numbers;
  private final Set<String> others = new TreeSet<>();

  ForeignColumn(CsvTable table, int index) {
    this.index = index;
    this.head = table.header().cell(index);
    List<Double> found = new ArrayList<>();
    table.rows().stream()
        .map(row -> row.cell(index))
        .filter(cell -> !cell.isEmpty() && !cell.equals(head))
        .forEach(cell -> take(cell, found));
    this.numbers = found.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private void take(String cell, List<Double> found) {
    if (SENTINELS.contains(cell)) {
      others.add(cell);
    } else if (NUMBER.matcher(cell).matches()) {
      found.add(Double.parseDouble(cell.replace(',', '.')));
      texts.add(cell);
    } else {
      texts.add(cell);
      if (others.size() <= MAX_MARKS) {
        others.add(cell);
      }
    }
  }

  int index() {
    return index;
  }

  String head() {
    return head;
  }

  /** Returns true if all cells are blank. */
  boolean isBlank() {
    return texts.isEmpty() && others.isEmpty();
  }

  /** Returns the cells that are neither empty nor a sentinel. */
  List<String> texts() {
    return texts;
  }

  /**
   * Returns the header in lower-case words: {@code battTemp_C} is batt, temp, c; kW and SoC are not
   * split.
   */
  List<String> words() {
    return Arrays.stream(
            head.replace("kW", "kw")
                .replace("SoC", "soc")
                .replaceAll("(?<=[a-z])(?=[A-Z])|(?<=SOC)(?=[A-Z][a-z])", " ")
                .toLowerCase(Locale.ROOT)
                .split("[^\\p{L}\\p{N}%\u00b0]+"))
        .filter(word -> !word.isEmpty())
        .toList();
  }

  /** Returns true if nearly all of its cells are numbers. */
  boolean isNumeric() {
    return numbers.length > 0 && numbers.length >= 0.8 * texts.size() && others.size() <= MAX_MARKS;
  }

  /** Returns the representations of missing values in a numeric column. */
  Set<String> marks() {
    return isNumeric() ? others : Set.of();
  }

  double least() {
    return Arrays.stream(numbers).min().orElse(Double.NaN);
  }

  double greatest() {
    return Arrays.stream(numbers).max().orElse(Double.NaN);
  }

  double first() {
    return numbers[0];
  }

  double last() {
    return numbers[numbers.length - 1];
  }

  /** Returns the share of steps between consecutive numbers that do not decrease. */
  double risingShare() {
    int rising = 0;
    for (int i = 1; i < numbers.length; i++) {
      rising += numbers[i] >= numbers[i - 1] ? 1 : 0;
    }
    return numbers.length < 2 ? 0 : rising / (numbers.length - 1.0);
  }

  /** Returns the share of negative numbers. */
  double negativeShare() {
    return Arrays.stream(numbers).filter(n -> n < 0).count() / (double) numbers.length;
  }
}
