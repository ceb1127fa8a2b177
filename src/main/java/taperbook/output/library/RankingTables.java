package taperbook.output.library;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.plan.LibraryPlan;
import taperbook.quantity.Unit;
import taperbook.result.Ranking;

/** Ranks of vehicles as intervals, one row per vehicle of each group of conditions. */
final class RankingTables {
  /** Maximum number of rows; the groups with the fewest vehicles are omitted first. */
  private static final int MOST = 60;

  private final NumberFormatter formatter;

  RankingTables(NumberFormatter formatter) {
    this.formatter = formatter;
  }

  List<Map<String, Object>> rows(List<Ranking> rankings) {
    List<Map<String, Object>> rows = new ArrayList<>();
    List<Ranking> largest =
        rankings.stream()
            .sorted((a, b) -> Integer.compare(b.places().size(), a.places().size()))
            .toList();
    for (Ranking ranking : largest) {
      for (Ranking.Place place : ranking.places()) {
        if (rows.size() < MOST) {
          rows.add(row(ranking, place));
        }
      }
    }
    return rows;
  }

  /** Describes the spread between runs of one vehicle, and whether the ranks include it. */
  String repeatability(List<Ranking> rankings) {
    return rankings.stream()
        .filter(r -> r.runDegrees() > 0)
        .findFirst()
        .map(
            r ->
                Texts.of(
                    "page.ranking_tables.times_of_one_vehicle_s",
                    formatter.exactly(
                        Math.round(1000 * r.relativeRunSpread()) / 10.0, Unit.PERCENT),
                    r.runDegrees()))
        .orElse(Texts.of("page.ranking_tables.no_vehicle_has_two_sessions"));
  }

  private Map<String, Object> row(Ranking ranking, Ranking.Place place) {
    Map<String, Object> row = new LinkedHashMap<>();
    boolean first = place.equals(ranking.places().get(0));
    String ranks =
        place.from() == place.to()
            ? "" + place.from()
            : Texts.of("page.ranking_tables.to", place.from(), place.to());
    row.put("conditions", first ? ranking.conditions() : "");
    row.put("vehicle", place.vehicle());
    row.put("sessions", "" + place.sessions());
    row.put("rank", Texts.of("page.ranking_tables.of", ranks, ranking.places().size()));
    row.put("value", formatter.value(place.mean(), Unit.SECOND));
    row.put("range", formatter.range(place.mean().bounds(), Unit.SECOND));
    for (String id : LibraryPlan.DAY_IDS.subList(1, LibraryPlan.DAY_IDS.size())) {
      row.put(id, place.middle().numbers().find(id).map(formatter::value).orElse("\u2013"));
    }
    return row;
  }
}
