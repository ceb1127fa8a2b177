package taperbook.write.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import taperbook.model.Caveat;
import taperbook.model.Drives;
import taperbook.model.Estimate;
import taperbook.model.Leg;
import taperbook.model.RangeItem;
import taperbook.model.RangeTest;
import taperbook.model.ReportNumber;
import taperbook.model.SessionResult;
import taperbook.model.Unit;

/** The range test behind the distances: its record, what came of it, its legs, what was scaled. */
final class RangeBasis {
  private final SessionResult session;
  private final NumberViews views;

  RangeBasis(SessionResult session, NumberViews views) {
    this.session = session;
    this.views = views;
  }

  Map<String, Object> map() {
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("present", session.rangeTest().isPresent());
    map.put("numbers", numbers());
    map.put("drives", session.drives().named().size() > 1 ? drives() : List.of());
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

  private List<Map<String, Object>> drives() {
    List<Map<String, Object>> rows = new ArrayList<>();
    Drives drives = session.drives();
    List<RangeTest> averaged = drives.agreeing();
    List<RangeTest> unused = drives.unused().stream().map(Drives.Unused::test).toList();
    for (RangeTest test : drives.named()) {
      String id = "drive_" + (rows.size() + 1) + "_";
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("number", String.valueOf(rows.size() + 1));
      row.put("name", test.name());
      row.put("air", fact(test, RangeItem.AMBIENT_TEMPERATURE));
      row.put("speed", views.view(session, id + "speed"));
      row.put("consumption", views.view(session, id + "consumption"));
      row.put("range", views.view(session, id + "range"));
      row.put(
          "use",
          averaged.contains(test) ? "averaged" : unused.contains(test) ? "not used" : "over speed");
      rows.add(row);
    }
    return rows;
  }

  private String fact(RangeTest test, RangeItem item) {
    return test.facts().known(item).map(FactTexts::value).orElse("not known");
  }

  /** Range and consumption at each speed that drives state, as numbers in pairs. */
  private List<Map<String, Object>> speeds() {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (String at : Drives.speedIds(session.numbers())) {
      rows.add(
          Map.of(
              "speed", Drives.speedOf(at) + "\u00a0" + (at.endsWith("mph") ? "mph" : "km/h"),
              "range", views.view(session, "range" + at),
              "consumption", views.view(session, "consumption" + at)));
    }
    return rows;
  }

  private List<String> scaled(RangeTest test) {
    List<String> sentences = new ArrayList<>();
    Optional<ReportNumber> range = session.numbers().find("driven_range_full");
    String drive = FactTexts.drive(test.facts());
    if (range.flatMap(ReportNumber::estimate).isPresent() && !drive.isEmpty()) {
      sentences.add("The drive covered " + drive + ".");
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
