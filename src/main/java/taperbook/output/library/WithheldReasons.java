package taperbook.output.library;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The reasons why numbers were withheld, numbered in the order they are met. */
final class WithheldReasons {
  private final Map<String, Integer> counts = new LinkedHashMap<>();
  private final Map<String, Integer> marks = new LinkedHashMap<>();
  private int others;

  /** The mark of a reason, the same for the same reason. */
  String mark(String reason) {
    counts.merge(reason, 1, Integer::sum);
    return String.valueOf(marks.computeIfAbsent(reason, r -> marks.size() + 1));
  }

  /** Counts a reason that has no mark in the table, if it has one elsewhere there. */
  void count(String reason) {
    if (marks.containsKey(reason)) {
      counts.merge(reason, 1, Integer::sum);
    } else {
      others++;
    }
  }

  /** How many numbers have reasons without a mark. */
  int others() {
    return others;
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
