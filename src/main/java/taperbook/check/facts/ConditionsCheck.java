package taperbook.check.facts;

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
public final class ConditionsCheck {
  private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");
  private static final List<ConditionItem> PRICES =
      List.of(
          ConditionItem.PRICE_PER_KWH, ConditionItem.PRICE_PER_MINUTE, ConditionItem.SESSION_FEE);

  private final FactSheet<ConditionItem> sheet;
  private final ProblemLog log;

  private ConditionsCheck(CsvTable table, ProblemLog log) {
    this.sheet = new FactSheet<>(table, ConditionItem.class, log);
    this.log = log;
  }

  public static Facts<ConditionItem> check(CsvTable table, ProblemLog log) {
    ConditionsCheck check = new ConditionsCheck(table, log);
    Facts<ConditionItem> facts = check.sheet.check();
    check.currencies(facts);
    return facts;
  }

  private void currencies(Facts<ConditionItem> facts) {
    Optional<Fact> stated = facts.known(ConditionItem.CURRENCY);
    if (stated.isPresent() && !CURRENCY.matcher(stated.get().written()).matches()) {
      log.add(
          ProblemCode.VALUE_NOT_UNDERSTOOD,
          stated.get().row().line(),
          sheet.valueNumber(),
          Quoted.of(stated.get().written()),
          "three capitals of ISO 4217, as in EUR, for currency",
          "write the currency in that form");
      return;
    }
    String first = stated.map(Fact::written).orElse("");
    int firstLine = stated.map(f -> f.row().line()).orElse(0);
    for (Fact price : PRICES.stream().flatMap(i -> facts.known(i).stream()).toList()) {
      String currency = price.unit().substring(0, 3);
      if (first.isEmpty()) {
        first = currency;
        firstLine = price.row().line();
      } else if (!currency.equals(first)) {
        tellDiffers(price, first, firstLine);
      }
    }
  }

  private void tellDiffers(Fact price, String first, int firstLine) {
    log.add(
        ProblemCode.FACTS_CONTRADICT,
        price.row().line(),
        sheet.unitNumber(),
        Quoted.of(price.unit()),
        "the currency " + first + " as on line " + firstLine,
        "write all prices in one currency");
  }
}
