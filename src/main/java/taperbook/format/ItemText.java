package taperbook.format;

import java.util.List;
import taperbook.quantity.Quantity;
import taperbook.quantity.Unit;
import taperbook.session.Item;
import taperbook.session.ItemKind;

/** Describes the permitted values of an item. */
public final class ItemText {
  private ItemText() {}

  /** Returns a description of an item's values, such as {@code a number in km or mi}. */
  public static String takes(Item item) {
    ItemKind kind = item.kind();
    return switch (kind.form()) {
      case DATE -> "a day, as in 2026-03-14";
      case TEXT -> "text";
      case WORD -> alternatives(kind.words());
      case AMOUNT -> number(kind);
      case AMOUNT_OR_WORD -> number(kind) + "; or " + alternatives(kind.words());
      case CORRECTION -> "a number in 1 or %";
      case MOMENT -> "a time in min:s, h:min:s, s, min or h, or a clock time with unit ISO 8601";
      case PRICE -> "a number in EUR" + kind.words().get(0) + " or another currency's";
    };
  }

  private static String number(ItemKind kind) {
    Quantity quantity = kind.quantity().orElseThrow();
    return "a number in " + alternatives(Unit.of(quantity).stream().map(Unit::symbol).toList());
  }

  /** Returns alternatives as text, such as {@code film, log or by eye}. */
  static String alternatives(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
  }
}
