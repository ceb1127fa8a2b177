package taperbook.write.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import taperbook.model.Caveat;
import taperbook.model.Estimate;
import taperbook.model.Leg;
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
    for (String id : List.of("consumption", "driven_range_full")) {
      session.numbers().find(id).ifPresent(n -> numbers.add(views.view(n)));
    }
    return numbers;
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
