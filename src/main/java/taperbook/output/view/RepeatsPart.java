package taperbook.output.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import taperbook.format.Labels;
import taperbook.format.NumberFormatter;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;
import taperbook.session.ConditionItem;
import taperbook.session.Session;

/** The runs of the reported session: each headline number in every run, and over all runs. */
final class RepeatsPart {
  private final ReportResult result;
  private final NumberTable table;

  RepeatsPart(ReportResult result, NumberViews views, NumberFormatter formatter) {
    this.result = result;
    this.table = new NumberTable(views, formatter);
  }

  /**
   * Returns {@code present}, {@code runs} and {@code table}, as described in {@code report.ftlh}.
   */
  Map<String, Object> map() {
    boolean present = !result.runs().repeats().isEmpty();
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("present", present);
    map.put("runs", runs().map(s -> called(s.session())).toList());
    List<Map<String, Object>> rows =
        present ? result.main().numbers().headline().stream().map(this::row).toList() : List.of();
    map.put(
        "table",
        Map.of(
            "first",
            Labels.of("head.number"),
            "heads",
            Stream.of("head.mean", "head.run_spread", "head.next_run")
                .map(key -> NumberTable.head(Labels.of(key), ""))
                .toList(),
            "rows",
            rows));
    return map;
  }

  private Stream<SessionResult> runs() {
    return Stream.concat(Stream.of(result.main()), result.runs().repeats().stream());
  }

  private static String called(Session session) {
    Optional<String> date =
        session.conditions().text(ConditionItem.DATE).map(NumberFormatter::dateOrAsIs);
    return date.map(d -> d + " (" + session.name() + ")").orElse(session.name());
  }

  /** Returns the values of the runs as texts, {@code each}; then the numbers over them. */
  private Map<String, Object> row(ReportNumber number) {
    List<Optional<ReportNumber>> each =
        runs()
            .map(s -> s.numbers().find(number.id()).filter(n -> n.estimate().isPresent()))
            .toList();
    List<Optional<ReportNumber>> numbers = new ArrayList<>(each);
    for (String over : List.of("_mean", "_run_spread", "_next_run")) {
      numbers.add(result.main().numbers().find(number.id() + over));
    }
    Map<String, Object> row = table.row(new NumberTable.Row(number.label(), numbers));
    List<?> cells = (List<?>) Objects.requireNonNull(row.get("cells"));
    row.put(
        "each",
        cells.subList(0, each.size()).stream()
            .map(c -> (Map<?, ?>) c)
            .map(c -> String.valueOf(c.get("shown")))
            .map(v -> v.isEmpty() ? "\u2013" : v)
            .toList());
    row.put("cells", cells.subList(each.size(), cells.size()));
    return row;
  }
}
