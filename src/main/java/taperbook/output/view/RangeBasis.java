package taperbook.output.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.Drives;
import taperbook.result.ReportNumber;
import taperbook.result.SessionResult;
import taperbook.session.Caveat;
import taperbook.session.Leg;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;

/** The range test behind the distances: its record, results, legs, and scaling. */
final class RangeBasis {
  private final SessionResult session;
  private final NumberViews views;
  private final NumberFormatter formatter;
  private final NumberTable table;

  RangeBasis(SessionResult session, NumberViews views, NumberFormatter formatter) {
    this.session = session;
    this.views = views;
    this.formatter = formatter;
    this.table = new NumberTable(views, formatter);
  }

  Map<String, Object> map() {
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("present", session.rangeTest().isPresent());
    map.put("numbers", numbers());
    map.put("drives", drives());
    map.put("speeds", speeds());
    session
        .rangeTest()
        .ifPresent(
            test -> {
              map.put("name", test.name());
              map.put("vehicle", test.vehicle());
              map.put("facts", FactTexts.table(test.facts()));
              map.put("legs", legs(test));
              map.put("scaled", scaled(test));
            });
    return map;
  }

  private List<Map<String, Object>> numbers() {
    List<Map<String, Object>> numbers = new ArrayList<>();
    for (String id :
        List.of(
            "consumption",
            "consumption_drive_spread",
            "driven_range_full",
            "driven_range_full_drive_spread")) {
      session.numbers().find(id).ifPresent(n -> numbers.add(views.view(n)));
    }
    return numbers;
  }

  private Map<String, Object> drives() {
    Drives drives = session.drives();
    List<RangeTest> averaged = drives.agreeing();
    List<RangeTest> unused = drives.unused().stream().map(Drives.Unused::test).toList();
    List<NumberTable.Row> rows = new ArrayList<>();
    List<String> uses = new ArrayList<>();
    List<RangeTest> named = drives.named().size() > 1 ? drives.named() : List.of();
    for (RangeTest test : named) {
      String id = "drive_" + (rows.size() + 1) + "_";
      rows.add(
          new NumberTable.Row(
              (rows.size() + 1) + ": " + test.name(),
              numbers(id + "speed", id + "consumption", id + "range")));
      uses.add(
          averaged.contains(test)
              ? Texts.of("page.range_basis.averaged")
              : unused.contains(test)
                  ? Texts.of("page.range_basis.not_used")
                  : Texts.of("page.range_basis.over_speed"));
    }
    Map<String, Object> map =
        table.byColumn(
            Texts.of("head.drive"),
            List.of(
                Texts.of("head.average_speed"),
                Texts.of("head.consumption"),
                Texts.of("head.full_range")),
            rows);
    for (int i = 0; i < rows.size(); i++) {
      Map<String, Object> row = NumberTable.rowOf(map, i);
      row.put("air", fact(named.get(i), RangeItem.AMBIENT_TEMPERATURE));
      row.put("use", uses.get(i));
    }
    return map;
  }

  private List<Optional<ReportNumber>> numbers(String... ids) {
    return Stream.of(ids).map(session.numbers()::find).toList();
  }

  private String fact(RangeTest test, RangeItem item) {
    return test.facts()
        .known(item)
        .map(f -> FactTexts.value(f, formatter))
        .orElse(Texts.of("page.common.not_known"));
  }

  /** Returns range and consumption at each speed of the drives. */
  private Map<String, Object> speeds() {
    return table.byColumn(
        Texts.of("axis.speed"),
        List.of(Texts.of("head.full_range"), Texts.of("head.consumption")),
        Drives.speedIds(session.numbers()).stream()
            .map(
                at ->
                    new NumberTable.Row(
                        Drives.speedOf(at) + "\u00a0" + (at.endsWith("mph") ? "mph" : "km/h"),
                        numbers("range" + at, "consumption" + at)))
            .toList());
  }

  private List<String> scaled(RangeTest test) {
    List<String> sentences = new ArrayList<>();
    Optional<ReportNumber> range = session.numbers().find("driven_range_full");
    String drive = FactTexts.drive(test.facts(), formatter);
    if (range.flatMap(ReportNumber::estimate).isPresent() && !drive.isEmpty()) {
      sentences.add(Texts.of("page.range_basis.drive_covered", drive));
    }
    range.stream()
        .flatMap(n -> n.caveats().stream())
        .filter(c -> c.kind() == Caveat.Kind.RANGE_TEST)
        .forEach(c -> sentences.add(c.sentence()));
    return sentences;
  }

  private List<Map<String, Object>> legs(RangeTest test) {
    return test.legs().stream().map(this::leg).toList();
  }

  private Map<String, Object> leg(Leg leg) {
    return Map.of(
        "name", leg.name(),
        "distance", text(Optional.of(leg.distance()), Unit.KILOMETRE),
        "duration", text(leg.duration(), Unit.SECOND),
        "energy", text(leg.energyUsed(), Unit.KILOWATT_HOUR),
        "start", text(leg.soc().map(Leg.Span::start), Unit.PERCENT),
        "end", text(leg.soc().map(Leg.Span::end), Unit.PERCENT),
        "note", leg.note());
  }

  private String text(Optional<Estimate> estimate, Unit unit) {
    return estimate.map(e -> String.valueOf(views.view("", e, unit).get("value"))).orElse("\u2013");
  }
}
