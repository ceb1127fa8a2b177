package taperbook.write.library;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import taperbook.model.Caveat;
import taperbook.model.LibraryResult;
import taperbook.model.LibraryRow;

/** The kinds of caveat that a library's sessions carry, numbered, with how many carry each. */
final class CaveatKinds {
  private final Map<Caveat.Kind, List<String>> sessions = new EnumMap<>(Caveat.Kind.class);
  private final Map<Caveat.Kind, Integer> marks = new EnumMap<>(Caveat.Kind.class);

  /** Sessions of a large library that are named for each kind. */
  private static final int MOST_NAMED = 30;

  private final int all;
  private final boolean large;

  CaveatKinds(LibraryResult result) {
    this.all = result.rows().size();
    this.large = result.isLarge();
    for (LibraryRow row : result.rows()) {
      row.caveats()
          .forEach(
              kind -> sessions.computeIfAbsent(kind, k -> new ArrayList<>()).add(row.session()));
    }
    sessions.keySet().forEach(kind -> marks.put(kind, marks.size() + 1));
  }

  /** The marks of a row's caveats, rising. */
  List<String> marks(LibraryRow row) {
    return row.caveats().stream().map(marks::get).sorted().map(String::valueOf).toList();
  }

  /** Each kind with its mark and the sessions that carry it. */
  List<Map<String, Object>> list() {
    List<Map<String, Object>> list = new ArrayList<>();
    sessions.forEach(
        (kind, names) ->
            list.add(
                Map.of(
                    "mark",
                    String.valueOf(marks.get(kind)),
                    "kind",
                    kind.title(),
                    "count",
                    names.size() == all ? "all " + all : names.size() + " of " + all,
                    "everywhere",
                    names.size() == all,
                    "sessions",
                    large ? names.subList(0, Math.min(MOST_NAMED, names.size())) : names,
                    "more",
                    large ? Math.max(0, names.size() - MOST_NAMED) : 0)));
    return list;
  }
}
