package taperbook.blank;

import java.util.List;
import java.util.Optional;
import taperbook.format.NumberFormatter;
import taperbook.input.cell.ColumnSpec;
import taperbook.quantity.Quantity;
import taperbook.quantity.Unit;
import taperbook.session.ConditionItem;
import taperbook.session.Item;
import taperbook.session.RangeItem;

/** The unit that a start file suggests: the one that displays usually show. */
public final class StartUnits {
  private final boolean miles;
  private final NumberFormatter wording;

  /**
   * Creates the units for one tester.
   *
   * @param distance {@link Unit#MILE} or {@link Unit#KILOMETRE}
   */
  public StartUnits(Unit distance) {
    this.miles = distance == Unit.MILE;
    this.wording = new NumberFormatter(distance);
  }

  /** Returns the unit of distances. */
  Unit distance() {
    return miles ? Unit.MILE : Unit.KILOMETRE;
  }

  /** Returns the symbol of an item's unit; empty if it has none, or if only the tester knows it. */
  String of(Item item) {
    return switch (item.kind().form()) {
      case AMOUNT, AMOUNT_OR_WORD -> unit(item).symbol();
      case CORRECTION -> Unit.PERCENT.symbol();
      case MOMENT -> ColumnSpec.ELAPSED_UNITS.get(0);
      case DATE, TEXT, WORD, PRICE -> "";
    };
  }

  /**
   * Returns the unit of a column: of the permitted units, the one that matches the unit of
   * distances.
   */
  String of(List<String> units) {
    if (units.isEmpty()) {
      return "";
    }
    String usual = units.get(0);
    Optional<Unit> known = Unit.ofSymbol(usual);
    return known.map(u -> usual(u).symbol()).orElse(usual);
  }

  /** Returns a unit's symbol in handwritten form, such as {@code °C}. */
  static String name(String symbol) {
    return Unit.ofSymbol(symbol).map(NumberFormatter::name).orElse(symbol);
  }

  // The unit that displays usually show: common practice, no source.
  private Unit unit(Item item) {
    Quantity quantity = item.kind().quantity().orElseThrow();
    if (item == ConditionItem.PRECONDITIONING_TIME) {
      return Unit.MINUTE;
    }
    if (item == RangeItem.TYRE_PRESSURE) {
      return miles ? Unit.POUND_PER_SQUARE_INCH : Unit.BAR;
    }
    if (quantity == Quantity.CONSUMPTION && !miles) {
      return Unit.KILOWATT_HOUR_PER_100_KILOMETRES;
    }
    return usual(Unit.base(quantity));
  }

  /** Returns the unit that matches the unit of distances, among those that files may use. */
  private Unit usual(Unit base) {
    if (!miles) {
      return base;
    }
    return switch (base) {
      case CELSIUS -> Unit.FAHRENHEIT;
      case METRE -> Unit.FOOT;
      case KILOGRAM -> Unit.POUND;
      default -> wording.shown(base);
    };
  }
}
