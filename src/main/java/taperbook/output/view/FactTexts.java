package taperbook.output.view;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.quantity.Unit;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;
import taperbook.session.ConditionItem;
import taperbook.session.Fact;
import taperbook.session.Facts;
import taperbook.session.Item;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.Session;

/** Formats stated facts: as written, since they are the tester's and not computed. */
public final class FactTexts {
  /** Base units of the quantities that a report gives in one unit throughout. */
  private static final List<Unit> MIXED =
      List.of(Unit.KILOMETRE, Unit.KILOMETRE_PER_HOUR, Unit.CELSIUS, Unit.WATT_HOUR_PER_KILOMETRE);

  /** Base units of the quantities that follow the report's unit of distance. */
  private static final List<Unit> FOLLOWING =
      List.of(Unit.KILOMETRE, Unit.KILOMETRE_PER_HOUR, Unit.WATT_HOUR_PER_KILOMETRE);

  /** A stated fact. */
  record Stated(String item, String value, String known) {}

  private FactTexts() {}

  /** Returns all facts of a file in order; unknown ones are marked as such. */
  static <I extends Enum<I> & Item> List<Stated> table(Facts<I> facts) {
    return facts.all().entrySet().stream().map(e -> stated(e.getKey(), e.getValue())).toList();
  }

  private static Stated stated(Item item, Fact fact) {
    return fact.isKnown()
        ? new Stated(capital(item.words()), withSpread(fact), fact.howKnown().words())
        : new Stated(capital(item.words()), Texts.of("page.common.not_known"), "");
  }

  /** Describes the subject of a report: vehicle, place and day. */
  public static String subject(Session session) {
    return Stream.of(
            session.conditions().text(ConditionItem.VEHICLE),
            session.conditions().text(ConditionItem.PLACE),
            session.conditions().text(ConditionItem.DATE).map(NumberFormatter::dateOrAsIs))
        .flatMap(Optional::stream)
        .collect(Collectors.joining(", "));
  }

  /**
   * Describes the charge of the drive, such as {@code from 92 % to 11 %}, as far as it is known.
   */
  static String drive(Facts<RangeItem> facts, NumberFormatter formatter) {
    Optional<Fact> distance = facts.known(RangeItem.DISTANCE);
    Optional<Fact> start = facts.known(RangeItem.START_SOC);
    Optional<Fact> end = facts.known(RangeItem.END_SOC);
    return distance.isEmpty() || start.isEmpty() || end.isEmpty()
        ? ""
        : Texts.of(
            "page.fact_texts.from_to_of_displayed_charge",
            value(distance.get(), formatter),
            value(start.get()),
            value(end.get()));
  }

  /** Returns a known fact with its unit. */
  public static String value(Fact fact) {
    return fact.unit().isEmpty()
        ? NumberFormatter.dateOrAsIs(fact.written())
        : fact.written() + unit(fact);
  }

  /**
   * Returns a known fact in the units of a report, with the original in brackets if its unit
   * differs, such as {@code 55.4 °F (13 °C)}.
   */
  static String value(Fact fact, NumberFormatter formatter) {
    return converted(fact, MIXED, formatter)
        .map(converted -> converted + " (" + value(fact) + ")")
        .orElseGet(() -> value(fact));
  }

  /** Returns the fact as {@link #value(Fact, NumberFormatter)}, or that it is not known. */
  static String valueIfKnown(Optional<Fact> fact, NumberFormatter formatter) {
    return fact.map(f -> value(f, formatter)).orElse(Texts.of("page.common.not_known"));
  }

  /** Returns the fact in the report's unit, if that differs and is one of these. */
  private static Optional<String> converted(
      Fact fact, List<Unit> bases, NumberFormatter formatter) {
    Optional<Unit> written = Unit.ofSymbol(fact.unit()).filter(u -> fact.amount().isPresent());
    return written
        .flatMap(u -> bases.stream().filter(b -> b.quantity() == u.quantity()).findFirst())
        .filter(b -> formatter.shown(b) != written.orElseThrow())
        .map(b -> formatter.value(fact.amount().orElseThrow(), b));
  }

  /**
   * Returns all facts by session or range test and by item, in the report's unit of distance: for a
   * session its conditions and, for items these lack, those of its vehicle's range test; for a
   * range test its own. Unknown facts are marked as such.
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

  /** Returns a fact as stated, or in the report's unit of distance if that differs. */
  static String words(Fact fact, NumberFormatter formatter) {
    return fact.isKnown()
        ? converted(fact, FOLLOWING, formatter).orElseGet(() -> value(fact))
        : Texts.of("page.common.not_known");
  }

  /** Returns a known fact with its unit and stated uncertainty. */
  private static String withSpread(Fact fact) {
    return fact.giveOrTake().isEmpty()
        ? value(fact)
        : Texts.of("page.fact_texts.give_or_take", value(fact), fact.giveOrTake(), unit(fact));
  }

  private static String unit(Fact fact) {
    String unit = Unit.ofSymbol(fact.unit()).map(NumberFormatter::name).orElse(fact.unit());
    return unit.isEmpty() ? "" : "\u00a0" + unit;
  }

  /** Capitalises the first letter of an item. */
  public static String capital(String words) {
    // Locale-independent: items are plain ASCII.
    return Character.toUpperCase(words.charAt(0)) + words.substring(1).replace(" soc", " SOC");
  }
}
