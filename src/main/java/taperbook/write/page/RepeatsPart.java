package taperbook.write.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import taperbook.model.ReportNumber;
import taperbook.model.ReportResult;
import taperbook.model.SessionResult;
import taperbook.words.Wording;

/** The runs of the reported session: each headline number in all of them, and over them. */
final class RepeatsPart {
  private final ReportResult result;
  private final NumberViews views;
  private final Wording wording;

  RepeatsPart(ReportResult result, NumberViews views, Wording wording) {
    this.result = result;
    this.views = views;
    this.wording = wording;
  }

  /** {@code present}, {@code runs} and {@code rows}, as the head of {@code report.ftlh} says. */
  Map<String, Object> map() {
    List<SessionResult> repeats = result.runs().repeats();
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("present", !repeats.isEmpty());
    map.put(
        "runs",
        Stream.concat(Stream.of(result.main()), repeats.stream())
            .map(s -> FactTexts.subject(s.session()) + " (" + s.session().name() + ")")
            .toList());
    List<Map<String, Object>> rows = new ArrayList<>();
    if (!repeats.isEmpty()) {
      result.main().numbers().headline().forEach(number -> rows.add(row(number)));
    }
    map.put("rows", rows);
    return map;
  }

  private Map<String, Object> row(ReportNumber number) {
    String each =
        Stream.concat(Stream.of(result.main()), result.runs().repeats().stream())
            .map(s -> s.numbers().find(number.id()))
            .map(n -> n.filter(x -> x.estimate().isPresent()))
            .map((Optional<ReportNumber> n) -> n.map(wording::value).orElse("\u2013"))
            .collect(Collectors.joining("; "));
    return Map.of(
        "label",
        number.label(),
        "each",
        each,
        "mean",
        views.view(result.main(), number.id() + "_mean"),
        "spread",
        views.view(result.main(), number.id() + "_run_spread"),
        "next",
        views.view(result.main(), number.id() + "_next_run"));
  }
}
