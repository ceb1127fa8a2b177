package taperbook.write.page;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import taperbook.model.ReportNumber;
import taperbook.model.ReportResult;
import taperbook.model.Role;

/** Rows of a table with a column for each session. */
final class SideBySide {
  private SideBySide() {}

  /**
   * One row for each number of a place that a session has; the label is that of a session that
   * measured it.
   */
  static List<Map<String, Object>> rows(ReportResult result, NumberViews views, Role role) {
    Set<String> ids = new LinkedHashSet<>();
    result.sessions().forEach(s -> s.numbers().with(role).forEach(n -> ids.add(n.id())));
    List<Map<String, Object>> rows = new ArrayList<>();
    for (String id : ids) {
      List<ReportNumber> found =
          result.sessions().stream().flatMap(s -> s.numbers().find(id).stream()).toList();
      Optional<ReportNumber> named =
          found.stream()
              .filter(n -> n.estimate().isPresent())
              .findFirst()
              .or(() -> found.stream().findFirst());
      named.ifPresent(
          number ->
              rows.add(
                  Map.of(
                      "label",
                      number.label(),
                      "cells",
                      result.sessions().stream().map(s -> views.view(s, id)).toList())));
    }
    return rows;
  }
}
