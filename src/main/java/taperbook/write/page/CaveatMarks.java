package taperbook.write.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import taperbook.model.Caveat;
import taperbook.model.ReportResult;
import taperbook.model.SessionResult;

/** The caveats of a report, numbered by kind, so that a number can refer to them by marks. */
final class CaveatMarks {
  private final Map<Caveat, Integer> marks = new LinkedHashMap<>();
  private final Map<Caveat, Set<String>> sessions = new LinkedHashMap<>();
  private final int sessionCount;

  CaveatMarks(ReportResult result) {
    this.sessionCount = result.sessions().size();
    for (SessionResult session : result.sessions()) {
      all(session)
          .forEach(
              c ->
                  sessions
                      .computeIfAbsent(c, x -> new LinkedHashSet<>())
                      .add(session.session().name()));
    }
    sessions.keySet().stream()
        .sorted(Comparator.comparing(Caveat::kind))
        .forEach(c -> marks.put(c, marks.size() + 1));
  }

  /** All caveats of a session: its own and those of its numbers. */
  static Set<Caveat> all(SessionResult session) {
    Set<Caveat> all = new LinkedHashSet<>(session.caveats());
    session.numbers().all().forEach(n -> all.addAll(n.caveats()));
    return all;
  }

  /** Marks for a number, unbroken runs of them together: {@code text} and {@code anchor}. */
  List<Map<String, Object>> of(List<Caveat> caveats) {
    List<Integer> sorted =
        caveats.stream().distinct().map(c -> marks.getOrDefault(c, 0)).sorted().toList();
    List<Map<String, Object>> runs = new ArrayList<>();
    int start = 0;
    for (int i = 1; i <= sorted.size(); i++) {
      if (i == sorted.size() || sorted.get(i) != sorted.get(i - 1) + 1) {
        int first = sorted.get(start);
        int last = sorted.get(i - 1);
        String joiner = last == first + 1 ? ", " : "\u2013";
        String text = first == last ? "" + first : first + joiner + last;
        runs.add(Map.of("text", text, "anchor", "caveat-" + first));
        start = i;
      }
    }
    return runs;
  }

  /** The caveats under their kinds, in order. */
  List<Map<String, Object>> byKind() {
    Map<Caveat.Kind, List<Map<String, Object>>> byKind = new EnumMap<>(Caveat.Kind.class);
    marks.forEach(
        (caveat, mark) ->
            byKind
                .computeIfAbsent(caveat.kind(), k -> new ArrayList<>())
                .add(
                    Map.of(
                        "mark", mark.toString(),
                        "anchor", "caveat-" + mark,
                        "sentence", caveat.sentence(),
                        "sessions", sessionsOf(caveat))));
    List<Map<String, Object>> kinds = new ArrayList<>();
    byKind.forEach((kind, items) -> kinds.add(Map.of("kind", kind.title(), "items", items)));
    return kinds;
  }

  /** The sessions that a caveat is about, or nothing if it is about all of them. */
  private String sessionsOf(Caveat caveat) {
    Set<String> names = sessions.getOrDefault(caveat, Set.of());
    return names.size() == sessionCount ? "" : String.join(", ", names);
  }
}
