package taperbook.output.share;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Typed access to the model that the page of a report is printed from. */
final class PageView {
  private PageView() {}

  /** A text; empty if there is none. */
  static String text(Map<String, Object> map, String name) {
    return map.get(name) instanceof String text ? text : "";
  }

  static boolean is(Map<String, Object> map, String name) {
    return Boolean.TRUE.equals(map.get(name));
  }

  /** A part; empty if there is none. */
  static Map<String, Object> part(Map<String, Object> map, String name) {
    return part(map.get(name));
  }

  /** The parts of a list; none if there is no list. */
  static List<Map<String, Object>> parts(Map<String, Object> map, String name) {
    return map.get(name) instanceof List<?> list
        ? list.stream().map(PageView::part).toList()
        : List.of();
  }

  /** The texts of a list; none if there is no list. */
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
