package taperbook.output.library;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import taperbook.format.RowNames;
import taperbook.i18n.Texts;
import taperbook.result.LibraryResult;
import taperbook.result.LibraryRow;
import taperbook.session.Caveat;

/** The kinds of caveat of a library's sessions, numbered, with the number of sessions of each. */
final class CaveatKinds {
  private final Map<Caveat.Kind, List<LibraryRow>> sessions = new EnumMap<>(Caveat.Kind.class);
  private final Map<Caveat.Kind, Integer> marks = new EnumMap<>(Caveat.Kind.class);

  /** Maximum number of sessions named per kind. */
  private static final int MOST_NAMED = 60;

  private final RowNames names;
  private final int all;

  CaveatKinds(LibraryResult result, RowNames names) {
    this.names = names;
    this.all = result.rows().size();
    for (LibraryRow row : result.rows()) {
      row.caveats()
          .forEach(kind -> sessions.computeIfAbsent(kind, k -> new ArrayList<>()).add(row));
    }
    sessions.keySet().forEach(kind -> marks.put(kind, marks.size() + 1));
  }

  /** Returns the marks of a row's caveats, ascending. */
  List<String> marks(LibraryRow row) {
    return row.caveats().stream().map(marks::get).sorted().map(String::valueOf).toList();
  }

  /** Returns each kind with its mark and its sessions, grouped by car. */
  List<Map<String, Object>> list() {
    List<Map<String, Object>> list = new ArrayList<>();
    sessions.forEach((kind, rows) -> list.add(map(kind, rows)));
    return list;
  }

  private Map<String, Object> map(Caveat.Kind kind, List<LibraryRow> rows) {
    boolean everywhere = rows.size() == all;
    String count =
        everywhere
            ? Texts.of("page.caveat_kinds.all", all)
            : Texts.of("page.common.of", rows.size(), all);
    List<LibraryRow> named = rows.subList(0, Math.min(MOST_NAMED, rows.size()));
    return Map.of(
        "mark",
        String.valueOf(marks.get(kind)),
        "kind",
        kind.title(),
        "count",
        count,
        "everywhere",
        everywhere,
        "sessions",
        names.byCar(named),
        "more",
        rows.size() - named.size());
  }
}
