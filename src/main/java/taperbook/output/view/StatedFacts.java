package taperbook.output.view;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import taperbook.format.NumberFormatter;
import taperbook.quantity.Unit;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;
import taperbook.session.Fact;
import taperbook.session.Facts;
import taperbook.session.Item;
import taperbook.session.RangeTest;

/** The stated facts by session or range test and by item, in the report's units. */
public final class StatedFacts {
  /** Base units of the quantities that follow the report's unit of distance. */
  private static final Set<Unit> FOLLOWING =
      Set.of(Unit.KILOMETRE, Unit.KILOMETRE_PER_HOUR, Unit.WATT_HOUR_PER_KILOMETRE);

  private StatedFacts() {}

  /**
   * Returns all facts: for a session its conditions and, for items these lack, those of its
   * vehicle's range test; for a range test its own. Unknown facts are marked as such.
   */
  public static Map<String, Map<String, String>> of(ReportResult result) {
    NumberFormatter formatter = new NumberFormatter(result.plan().style());
    Map<String, Map<String, String>> all = new LinkedHashMap<>();
    for (SessionResult session : result.sessions()) {
      Map<String, String> facts = words(session.session().conditions(), formatter);
      Optional<RangeTest> test = session.rangeTest();
      test.ifPresent(t -> words(t.facts(), formatter).forEach(facts::putIfAbsent));
      all.put(session.session().name(), facts);
      test.ifPresent(t -> all.putIfAbsent(t.name(), words(t.facts(), formatter)));
    }
    return all;
  }

  private static <I extends Enum<I> & Item> Map<String, String> words(
      Facts<I> facts, NumberFormatter formatter) {
    Map<String, String> words = new LinkedHashMap<>();
    facts.all().forEach((item, fact) -> words.put(item.words(), words(fact, formatter)));
    return words;
  }

  /** Returns a fact as stated, or in the report's unit if that differs. */
  static String words(Fact fact, NumberFormatter formatter) {
    if (!fact.isKnown()) {
      return "not known";
    }
    Optional<Unit> unit = Unit.ofSymbol(fact.unit());
    if (unit.isPresent() && fact.amount().isPresent()) {
      Unit base = Unit.base(unit.get().quantity());
      if (FOLLOWING.contains(base) && unit.get() != formatter.shown(base)) {
        return formatter.value(fact.amount().get(), base);
      }
    }
    return FactTexts.value(fact);
  }
}
