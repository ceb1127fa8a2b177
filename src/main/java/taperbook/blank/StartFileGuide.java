package taperbook.blank;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import taperbook.cli.LineWrapping;
import taperbook.format.ItemText;
import taperbook.i18n.Texts;
import taperbook.input.KnownColumn;
import taperbook.session.Item;

/**
 * Generates the text file that explains every column and item of the start files. The program does
 * not read it.
 */
final class StartFileGuide {
  private static final int WIDTH = 88;
  private static final String INDENT = "    ";

  private StartFileGuide() {}

  static String text(
      Map<String, List<KnownColumn>> columns, String factFile, List<? extends Item> items) {
    List<String> lines = new ArrayList<>();
    lines.addAll(wrapped("", Texts.of("blank.start_file_guide.about_files_in_this_folder")));
    columns.forEach(
        (file, known) -> {
          lines.add("");
          lines.add(Texts.of("blank.start_file_guide.columns_of", file));
          known.forEach(c -> column(c, lines));
        });
    lines.add("");
    lines.add(Texts.of("blank.start_file_guide.items_of", factFile));
    lines.addAll(wrapped("", Texts.of("blank.start_file_guide.item_with_star_needs_value")));
    items.forEach(i -> item(i, lines));
    return String.join("\n", lines) + "\n";
  }

  private static void column(KnownColumn column, List<String> lines) {
    lines.add("");
    lines.add("  " + column.name());
    lines.addAll(wrapped(INDENT, column.explanation()));
    if (!column.units().isEmpty()) {
      lines.addAll(
          wrapped(
              INDENT,
              Texts.of(
                  "blank.start_file_guide.heads",
                  String.join(", ", column.units().stream().map(column::head).toList()))));
    }
  }

  private static void item(Item item, List<String> lines) {
    lines.add("");
    lines.add("  " + item.words() + (item.required() ? " *" : ""));
    lines.addAll(wrapped(INDENT, item.explanation()));
    lines.addAll(wrapped(INDENT, Texts.of("blank.start_file_guide.value", ItemText.takes(item))));
  }

  /** Wraps a text to lines of at most {@value #WIDTH} characters. */
  private static List<String> wrapped(String indent, String text) {
    return LineWrapping.lines(indent + text, indent, WIDTH);
  }
}
