package taperbook.output.view;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import taperbook.format.Labels;
import taperbook.format.SessionNames;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.Role;
import taperbook.result.SessionResult;

/** Builds rows of a table with a column for each session. */
final class SideBySide {
  private SideBySide() {}

  /**
   * Returns one row per number with a role and one column per session, without rows that have no
   * value.
   *
   * @param wanted false for a table without rows
   */
  static Map<String, Object> table(
      ReportResult result, NumberTable table, boolean wanted, Role role) {
    Set<String> ids = new LinkedHashSet<>();
    if (wanted) {
      result.sessions().forEach(s -> s.numbers().with(role).forEach(n -> ids.add(n.id())));
    }
    List<SessionResult> sessions =
        result.sessions().stream()
            .filter(s -> ids.stream().anyMatch(id -> s.numbers().estimate(id).isPresent()))
            .toList();
    List<NumberTable.Row> rows = new ArrayList<>();
    for (String id : ids) {
      List<Optional<ReportNumber>> found =
          sessions.stream().map(s -> s.numbers().find(id)).toList();
      found.stream()
          .flatMap(Optional::stream)
          .filter(n -> n.estimate().isPresent())
          .findFirst()
          .ifPresent(n -> rows.add(new NumberTable.Row(n.label(), found)));
    }
    List<String> heads =
        SessionNames.heads(result.sessions().stream().map(SessionResult::session).toList());
    return table.byRow(
        Labels.of("head.number"),
        sessions.stream().map(s -> heads.get(result.sessions().indexOf(s))).toList(),
        rows);
  }
}
