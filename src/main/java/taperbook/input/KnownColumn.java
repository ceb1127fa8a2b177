package taperbook.input;

import java.util.List;
import taperbook.input.cell.ColumnSpec;

/**
 * A column that a file can have, as a tester is told of it.
 *
 * @param name its name
 * @param units the units it takes, the usual one first; empty if it takes none
 * @param explanation what goes into it, in a sentence
 */
public record KnownColumn(String name, List<String> units, String explanation) {
  /** Copies the units. */
  public KnownColumn {
    units = List.copyOf(units);
  }

  static KnownColumn of(ColumnSpec spec, String explanation) {
    return new KnownColumn(spec.name(), spec.units(), explanation);
  }

  /** The column head with a unit, such as {@code soc [%]}. */
  public String head(String unit) {
    return new ColumnSpec(name, units).head(unit);
  }

  /** The column head with the usual unit. */
  public String head() {
    return new ColumnSpec(name, units).head();
  }
}
