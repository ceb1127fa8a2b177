package taperbook.output.share;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Typed access to the template model of a report. */
final class PageView {
  private PageView() {}

  /** Returns a text; empty if missing. */
  static String text(Map<String, Object> map, String name) {
    return map.get(name) instanceof String text ? text : "";
  }

  static boolean is(Map<String, Object> map, String name) {
    return Boolean.TRUE.equals(map.get(name));
  }

  /** Returns a nested map; empty if missing. */
  static Map<String, Object> part(Map<String, Object> map, String name) {
    return part(map.get(name));
  }

  /** Returns the maps of a list; empty if missing. */
  static List<Map<String, Object>> parts(Map<String, Object> map, String name) {
    return map.get(name) instanceof List<?> list
        ? list.stream().map(PageView::part).toList()
        : List.of();
  }

  /** Returns the texts of a list; empty if missing. */
  static List<String> texts(Map<String, Object> map, String name) {
    return map.get(name) instanceof List<?> list
        ? list.stream().map(String::valueOf).toList()
        : List.of();
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> part(@Nullable Object part) {
    return part instanceof Map<?, ?> map ? (Map<String, Object>) map : Map.of();
  }
}
