package taperbook.verify;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import taperbook.i18n.Texts;
import taperbook.session.InputFile;

/**
 * The changes from one set of input files to another: by cell; by row if there are too many to undo
 * separately; and by file if there are still too many.
 */
public final class InputChanges {
  private static final String ITEM = "item";

  private final Map<String, InputFile> before;
  private final Map<String, InputFile> after;
  private final List<RowChange> rows;

  private InputChanges(Map<String, InputFile> before, Map<String, InputFile> after) {
    this.before = before;
    this.after = after;
    this.rows = RowChanges.between(before, after);
  }

  /**
   * Returns the changes between two sets of files.
   *
   * @param before the files of the published version, by path
   * @param after the current files, by path
   * @param max maximum number of changes; beyond it they are grouped by row, and then by file
   */
  public static List<InputChange> between(
      Map<String, InputFile> before, Map<String, InputFile> after, int max) {
    InputChanges changes = new InputChanges(before, after);
    boolean asText = changes.changedFiles().stream().allMatch(changes::isText);
    if (asText && changes.rows.size() <= max) {
      List<InputChange> cells =
          changes.rows.stream().flatMap(r -> changes.cells(r).stream()).toList();
      return cells.size() <= max ? cells : changes.rows.stream().map(changes::row).toList();
    }
    return changes.changedFiles().stream().map(changes::file).toList();
  }

  private List<String> changedFiles() {
    TreeSet<String> paths = new TreeSet<>(before.keySet());
    paths.addAll(after.keySet());
    return paths.stream().filter(p -> p.endsWith(".csv") && isChanged(p)).toList();
  }

  private boolean isChanged(String path) {
    InputFile one = before.get(path);
    InputFile other = after.get(path);
    return one == null || other == null || !one.sha256().equals(other.sha256());
  }

  /** Returns true if the lines of a file represent its content completely, before and after. */
  private boolean isText(String path) {
    return isText(before.get(path)) && isText(after.get(path));
  }

  private static boolean isText(@Nullable InputFile file) {
    return file != null
        && Arrays.equals(
            file.decoded(StandardCharsets.UTF_8).getBytes(StandardCharsets.UTF_8), file.bytes());
  }

  private InputChange file(String path) {
    long changed = rows.stream().filter(r -> r.file().equals(path)).count();
    Map<String, InputFile> undone = new TreeMap<>(after);
    InputFile old = before.get(path);
    if (old == null) {
      undone.remove(path);
    } else {
      undone.put(path, old);
    }
    String what =
        old == null
            ? Texts.of("verify.input_changes.new_file")
            : after.containsKey(path)
                ? Texts.of("verify.input_changes.changed_rows", changed)
                : Texts.of("verify.input_changes.taken_away");
    return new InputChange(path + ": " + what, undone);
  }

  private InputChange row(RowChange row) {
    return new InputChange(row.words(), with(row, row.before()));
  }

  /**
   * Returns the changed cells of a row; the whole row if it is new, removed or has a different
   * number of cells.
   */
  private List<InputChange> cells(RowChange row) {
    String head = lines(row.file()).get(0);
    char delimiter = CellSplit.delimiter(head);
    List<String> names = CellSplit.cells(head, delimiter);
    List<String> old = CellSplit.cells(row.before(), delimiter);
    List<String> now = CellSplit.cells(row.after(), delimiter);
    if (row.lineBefore() <= 1 || row.lineAfter() <= 1 || old.size() != now.size()) {
      return List.of(row(row));
    }
    List<InputChange> changes = new ArrayList<>();
    for (int i = 0; i < old.size(); i++) {
      if (!old.get(i).equals(now.get(i))) {
        List<String> reverted = new ArrayList<>(now);
        reverted.set(i, old.get(i));
        String item = names.get(0).equals(ITEM) && i > 0 ? ", " + now.get(0) : "";
        String column =
            names.size() == now.size()
                ? names.get(i)
                : Texts.of("verify.input_changes.column", i + 1);
        changes.add(
            new InputChange(
                row.file()
                    + ":"
                    + row.lineAfter()
                    + item
                    + ", "
                    + column
                    + ": "
                    + RowChange.describeReplacement(old.get(i), now.get(i)),
                with(row, String.join(String.valueOf(delimiter), reverted))));
      }
    }
    return changes;
  }

  private List<String> lines(String path) {
    return RowChanges.lines(after.get(path));
  }

  /** Returns the current files with one row replaced. */
  private Map<String, InputFile> with(RowChange row, String text) {
    List<String> lines = new ArrayList<>(lines(row.file()));
    if (row.lineAfter() == 0) {
      lines.add(placeOf(row), text);
    } else if (row.lineBefore() == 0) {
      lines.remove(row.lineAfter() - 1);
    } else {
      lines.set(row.lineAfter() - 1, text);
    }
    byte[] bytes = (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8);
    Map<String, InputFile> undone = new TreeMap<>(after);
    undone.put(row.file(), new InputFile(row.file(), bytes));
    return undone;
  }

  /**
   * Returns the index of a removed row among the current lines: before the first remaining line
   * that followed it.
   */
  private int placeOf(RowChange gone) {
    List<RowChange> own = rows.stream().filter(r -> r.file().equals(gone.file())).toList();
    long changedBefore =
        own.stream().filter(r -> 0 < r.lineBefore() && r.lineBefore() < gone.lineBefore()).count();
    long stayed = gone.lineBefore() - 1 - changedBefore;
    List<String> lines = lines(gone.file());
    long seen = 0;
    for (int i = 0; i < lines.size(); i++) {
      int line = i + 1;
      boolean same = own.stream().noneMatch(r -> r.lineAfter() == line);
      if (same && seen++ == stayed) {
        return i;
      }
    }
    return lines.size();
  }

  /** Splits a line of a table into its cells as written, including quotes (RFC 4180). */
  private static final class CellSplit {
    private static final List<Character> DELIMITERS = List.of(',', ';', '\t');

    private CellSplit() {}

    /** Returns the delimiter that splits a line into the most cells. */
    static char delimiter(String line) {
      char best = DELIMITERS.get(0);
      for (char delimiter : DELIMITERS) {
        if (cells(line, delimiter).size() > cells(line, best).size()) {
          best = delimiter;
        }
      }
      return best;
    }

    /** Returns the cells of a line; joined by the delimiter they give the line again. */
    static List<String> cells(String line, char delimiter) {
      List<String> cells = new ArrayList<>();
      boolean quoted = false;
      int from = 0;
      for (int i = 0; i < line.length(); i++) {
        char c = line.charAt(i);
        quoted ^= c == '"';
        if (c == delimiter && !quoted) {
          cells.add(line.substring(from, i));
          from = i + 1;
        }
      }
      cells.add(line.substring(from));
      return cells;
    }
  }
}
