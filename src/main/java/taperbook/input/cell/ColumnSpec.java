package taperbook.input.cell;

import java.util.List;
import taperbook.quantity.Quantity;
import taperbook.quantity.Unit;

/**
 * A column that a file may have.
 *
 * @param name its name
 * @param units the unit symbols it takes, the usual one first; empty if it takes none
 */
public record ColumnSpec(String name, List<String> units) {
  /** What elapsed times may be written in. */
  /** Stands for the unit of clock times. */
  public static final String CLOCK_UNIT = "ISO 8601";

  /** The units of elapsed times. */
  public static final List<String> ELAPSED_UNITS = List.of("min:s", "h:min:s", "s", "min", "h");

  public ColumnSpec {
    units = List.copyOf(units);
  }

  public static ColumnSpec plain(String name) {
    return new ColumnSpec(name, List.of());
  }

  public static ColumnSpec of(String name, Quantity quantity) {
    return new ColumnSpec(name, Unit.of(quantity).stream().map(Unit::symbol).toList());
  }

  public static ColumnSpec elapsed(String name) {
    return new ColumnSpec(name, ELAPSED_UNITS);
  }

  /** The head with the usual unit, such as {@code soc [%]}. */
  public String head() {
    return head(units.isEmpty() ? "" : units.get(0));
  }

  /** The head with a unit. */
  public String head(String unit) {
    return unit.isEmpty() ? name : name + " [" + unit + "]";
  }

  /** The units in words, such as {@code one of [km], [mi]}. */
  String unitsInWords() {
    String all = "[" + String.join("], [", units) + "]";
    return units.size() == 1 ? "the unit " + all : "one of the units " + all;
  }
}
