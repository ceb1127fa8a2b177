package taperbook.output.library;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The reasons why numbers were withheld, numbered by first use. */
final class WithheldReasons {
  private final Map<String, Integer> counts = new LinkedHashMap<>();
  private final Map<String, Integer> marks = new LinkedHashMap<>();
  private int others;

  /** Returns the mark of a reason, the same for equal reasons. */
  String mark(String reason) {
    counts.merge(reason, 1, Integer::sum);
    return String.valueOf(marks.computeIfAbsent(reason, r -> marks.size() + 1));
  }

  /** Counts a reason without a mark of its own in the table, unless it has one elsewhere there. */
  void count(String reason) {
    if (marks.containsKey(reason)) {
      counts.merge(reason, 1, Integer::sum);
    } else {
      others++;
    }
  }

  /** Returns the number of numbers whose reasons have no mark. */
  int others() {
    return others;
  }

  /** Returns all reasons with their marks and the number of numbers that each withholds. */
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
