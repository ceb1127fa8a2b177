package taperbook.format;

import taperbook.i18n.Joined;
import taperbook.i18n.Texts;
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
      case DATE -> Texts.of("format.item_text.day_as_in_2026_03");
      case TEXT -> "text";
      case WORD -> Joined.any(kind.words());
      case AMOUNT -> number(kind);
      case AMOUNT_OR_WORD ->
          Texts.of("format.item_text.or", number(kind), Joined.any(kind.words()));
      case CORRECTION -> Texts.of("format.item_text.number_in_1_or");
      case MOMENT -> Texts.of("format.item_text.time_in_min_s_h");
      case PRICE -> Texts.of("format.item_text.number_in_eur_or_another", kind.words().get(0));
    };
  }

  private static String number(ItemKind kind) {
    Quantity quantity = kind.quantity().orElseThrow();
    return Texts.of(
        "format.item_text.number_in",
        Joined.any(Unit.of(quantity).stream().map(Unit::symbol).toList()));
  }
}
