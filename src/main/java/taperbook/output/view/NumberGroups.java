package taperbook.output.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import taperbook.result.ReportNumber;

/** Groups the numbers of a session by method, for a table that states it once. */
final class NumberGroups {
  private NumberGroups() {}

  /**
   * Returns groups in the order of their first numbers: {@code method}, {@code basis} and {@code
   * numbers}, each number with its rows as additional {@code places}. Omits withheld numbers, which
   * have no rows; the report lists them with their reasons.
   */
  static List<Map<String, Object>> of(List<ReportNumber> all, NumberViews views, FileKeys keys) {
    Map<String, List<Map<String, Object>>> groups = new LinkedHashMap<>();
    Map<String, Map<String, Object>> heads = new LinkedHashMap<>();
    for (ReportNumber number : all) {
      if (number.estimate().isEmpty()) {
        continue;
      }
      Map<String, Object> view = views.view(number);
      view.put("places", keys.places(number.origin().rows()));
      String head = view.get("method") + "\n" + view.get("basis");
      groups.computeIfAbsent(head, h -> new ArrayList<>()).add(view);
      heads.putIfAbsent(head, view);
    }
    List<Map<String, Object>> list = new ArrayList<>();
    groups.forEach((head, numbers) -> list.add(group(heads.getOrDefault(head, Map.of()), numbers)));
    return list;
  }

  private static Map<String, Object> group(
      Map<String, Object> first, List<Map<String, Object>> numbers) {
    return Map.of(
        "method", first.getOrDefault("method", ""),
        "basis", first.getOrDefault("basis", ""),
        "numbers", numbers);
  }
}
