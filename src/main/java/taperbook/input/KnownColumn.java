package taperbook.input;

import java.util.List;
import taperbook.input.cell.ColumnSpec;

/**
 * A possible column of a file, as described to the tester.
 *
 * @param name its name
 * @param units the permitted units, the default first; empty if it has none
 * @param explanation its content, as a sentence
 */
public record KnownColumn(String name, List<String> units, String explanation) {
  public KnownColumn {
    units = List.copyOf(units);
  }

  static KnownColumn of(ColumnSpec spec, String explanation) {
    return new KnownColumn(spec.name(), spec.units(), explanation);
  }

  /** Returns the column header with a unit, such as {@code soc [%]}. */
  public String head(String unit) {
    return new ColumnSpec(name, units).head(unit);
  }

  /** Returns the column header with the default unit. */
  public String head() {
    return new ColumnSpec(name, units).head();
  }
}
