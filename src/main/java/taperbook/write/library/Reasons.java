package taperbook.write.library;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The reasons why numbers were withheld, numbered in the order they are met. */
final class Reasons {
  private final Map<String, Integer> counts = new LinkedHashMap<>();
  private final Map<String, Integer> marks = new LinkedHashMap<>();

  /** The mark of a reason, the same for the same reason. */
  String mark(String reason) {
    counts.merge(reason, 1, Integer::sum);
    return String.valueOf(marks.computeIfAbsent(reason, r -> marks.size() + 1));
  }

  /** All reasons with their marks and how many numbers each withholds. */
  List<Map<String, Object>> list() {
    List<Map<String, Object>> list = new ArrayList<>();
    marks.forEach(
        (reason, mark) ->
            list.add(
                Map.of(
                    "mark",
                    String.valueOf(mark),
                    "reason",
                    reason,
                    "count",
                    String.valueOf(counts.getOrDefault(reason, 0)))));
    return list;
  }
}
