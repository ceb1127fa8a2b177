package taperbook.metric.road;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import taperbook.i18n.Joined;
import taperbook.i18n.Message;
import taperbook.session.ConditionItem;
import taperbook.session.Fact;
import taperbook.session.Facts;
import taperbook.session.RowRef;

/** The prices of a session. A price is exact, not a rounded reading. */
final class Prices {
  private static final List<ConditionItem> ITEMS =
      List.of(
          ConditionItem.PRICE_PER_KWH, ConditionItem.PRICE_PER_MINUTE, ConditionItem.SESSION_FEE);

  private static final int LENGTH_OF_CODE = 3;

  private final Facts<ConditionItem> facts;

  Prices(Facts<ConditionItem> facts) {
    this.facts = facts;
  }

  /** Explains why no cost can be computed; empty if one can. */
  Optional<Message> whyNone() {
    Set<String> currencies = currencies();
    if (currencies.isEmpty()) {
      return Optional.of(Message.of("metric.prices.no_price_is_stated"));
    }
    return currencies.size() > 1
        ? Optional.of(Message.of("metric.prices.prices_are_in", Joined.and(currencies)))
        : Optional.empty();
  }

  /** Returns the ISO 4217 currency code; empty text if there is no price. */
  String currency() {
    return currencies().stream().findFirst().orElse("");
  }

  private Set<String> currencies() {
    Set<String> codes = new LinkedHashSet<>();
    for (ConditionItem item : ITEMS) {
      facts
          .known(item)
          .map(Fact::unit)
          .filter(u -> u.length() >= LENGTH_OF_CODE)
          .ifPresent(u -> codes.add(u.substring(0, LENGTH_OF_CODE)));
    }
    return codes;
  }

  boolean areByEnergy() {
    return facts.amount(ConditionItem.PRICE_PER_KWH).isPresent();
  }

  double perKilowattHour() {
    return price(ConditionItem.PRICE_PER_KWH);
  }

  double perMinute() {
    return price(ConditionItem.PRICE_PER_MINUTE);
  }

  double fee() {
    return price(ConditionItem.SESSION_FEE);
  }

  /** Returns a price, or zero if none is stated. */
  private double price(ConditionItem item) {
    return facts.amount(item).map(e -> e.value()).orElse(0.0);
  }

  List<RowRef> rows() {
    List<RowRef> rows = new ArrayList<>();
    ITEMS.forEach(item -> rows.addAll(facts.rows(item)));
    return rows;
  }
}
