package taperbook.input.cell;

import java.util.List;
import taperbook.quantity.Quantity;
import taperbook.quantity.Unit;

/**
 * A possible column of a file.
 *
 * @param name its name
 * @param units the permitted unit symbols, the default first; empty if it has none
 */
public record ColumnSpec(String name, List<String> units) {
  /** Placeholder for the unit of clock times. */
  public static final String CLOCK_UNIT = "ISO 8601";

  /** The permitted units of elapsed times. */
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

  /** Returns the header with the default unit, such as {@code soc [%]}. */
  public String head() {
    return head(units.isEmpty() ? "" : units.get(0));
  }

  /** Returns the header with a unit. */
  public String head(String unit) {
    return unit.isEmpty() ? name : name + " [" + unit + "]";
  }

  /** Returns a description of the units, such as {@code one of [km], [mi]}. */
  String unitsInWords() {
    String all = "[" + String.join("], [", units) + "]";
    return units.size() == 1 ? "the unit " + all : "one of the units " + all;
  }
}
