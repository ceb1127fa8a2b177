package taperbook.input.facts;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.input.csv.CsvTable;
import taperbook.session.ConditionItem;
import taperbook.session.Fact;
import taperbook.session.Facts;

/** Parses {@code conditions.csv}, and checks that its currencies agree. */
public final class ConditionsParser {
  private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");
  private static final List<ConditionItem> PRICES =
      List.of(
          ConditionItem.PRICE_PER_KWH, ConditionItem.PRICE_PER_MINUTE, ConditionItem.SESSION_FEE);

  private final FactsParser<ConditionItem> sheet;
  private final ProblemLog log;

  private ConditionsParser(CsvTable table, ProblemLog log) {
    this.sheet = new FactsParser<>(table, ConditionItem.class, log);
    this.log = log;
  }

  public static Facts<ConditionItem> check(CsvTable table, ProblemLog log) {
    ConditionsParser check = new ConditionsParser(table, log);
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
        reportDifferingCurrency(price, first, firstLine);
      }
    }
  }

  private void reportDifferingCurrency(Fact price, String first, int firstLine) {
    log.add(
        ProblemCode.FACTS_CONTRADICT,
        price.row().line(),
        sheet.unitNumber(),
        Quoted.of(price.unit()),
        "the currency " + first + " as on line " + firstLine,
        "write all prices in one currency");
  }
}
