package taperbook.check;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import taperbook.model.ConditionItem;
import taperbook.model.Fact;
import taperbook.model.Facts;
import taperbook.problem.ProblemCode;
import taperbook.problem.ProblemLog;
import taperbook.problem.Quoted;
import taperbook.read.CsvTable;

/** Checks {@code conditions.csv}: its facts, and that its currencies agree. */
final class ConditionsCheck {
  private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");
  private static final List<ConditionItem> PRICES =
      List.of(
          ConditionItem.PRICE_PER_KWH, ConditionItem.PRICE_PER_MINUTE, ConditionItem.SESSION_FEE);

  private ConditionsCheck() {}

  static Facts<ConditionItem> check(CsvTable table, ProblemLog log) {
    Facts<ConditionItem> facts = new FactSheet<>(table, ConditionItem.class, log).check();
    Optional<Fact> stated = facts.known(ConditionItem.CURRENCY);
    if (stated.isPresent() && !CURRENCY.matcher(stated.get().written()).matches()) {
      log.add(
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          stated.get().row().line(),
          0,
          Quoted.of(stated.get().written()),
          "three capitals of ISO 4217, as in EUR, for currency",
          "write the currency in that form");
      return facts;
    }
    String first = stated.map(Fact::written).orElse("");
    int firstLine = stated.map(f -> f.row().line()).orElse(0);
    for (ConditionItem item : PRICES) {
      Optional<Fact> price = facts.known(item);
      if (price.isPresent()) {
        String currency = price.get().unit().substring(0, 3);
        if (first.isEmpty()) {
          first = currency;
          firstLine = price.get().row().line();
        } else if (!currency.equals(first)) {
          tellDiffers(price.get(), first, firstLine, log);
        }
      }
    }
    return facts;
  }

  private static void tellDiffers(Fact price, String first, int firstLine, ProblemLog log) {
    log.add(
        ProblemCode.FACTS_CONTRADICT,
        price.row().line(),
        0,
        Quoted.of(price.unit()),
        "the currency " + first + " as on line " + firstLine,
        "write all prices in one currency");
  }
}
