package taperbook.output;

import java.util.AbstractMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import taperbook.chart.render.Figure;
import taperbook.output.view.ReadoutJson;

/**
 * A chart as seen by a template. Renders lazily: a page for paper uses neither of the two drawings
 * for browsers.
 */
final class FigureView extends AbstractMap<String, Object> {
  private static final Pattern WORDS = Pattern.compile("<(title|desc) [^>]*>[^<]*</\\1>\n");

  private final Map<String, Supplier<Object>> parts = new LinkedHashMap<>();
  private final Map<String, Object> asked = new LinkedHashMap<>();

  /**
   * Creates a view.
   *
   * @param narrow whether there is also a drawing for narrow screens
   */
  FigureView(Figure figure, boolean narrow) {
    parts.put("id", figure::id);
    parts.put("title", figure::title);
    parts.put("caption", figure::caption);
    parts.put("alt", () -> alt(figure));
    parts.put("svg", () -> TrustedMarkup.of(inPage(figure.svg())));
    parts.put("narrow", () -> TrustedMarkup.of(narrow ? inPage(figure.narrowSvg()) : ""));
    parts.put("comparing", figure::comparing);
    parts.put(
        "readout",
        () -> TrustedMarkup.of(narrow ? figure.readout().map(ReadoutJson::of).orElse("") : ""));
  }

  /** Returns a drawing without its own title and description: the surrounding element has them. */
  private static String inPage(String svg) {
    return WORDS
        .matcher(svg)
        .replaceAll("")
        .replaceFirst(" role=\"img\" aria-labelledby=\"[^\"]*\"", "");
  }

  /** Returns the text alternative, starting with the finding so that listeners can stop early. */
  private static String alt(Figure figure) {
    String finding = figure.title();
    String end = finding.endsWith(".") ? " " : ". ";
    return finding + end + figure.textAlternative();
  }

  @Override
  public @Nullable Object get(Object key) {
    return Optional.ofNullable(parts.get(key))
        .map(part -> asked.computeIfAbsent((String) key, name -> part.get()))
        .orElse(null);
  }

  @Override
  public boolean containsKey(Object key) {
    return parts.containsKey(key);
  }

  @Override
  public Set<Entry<String, Object>> entrySet() {
    return parts.keySet().stream()
        .map(name -> Map.entry(name, Optional.ofNullable(get(name)).orElseThrow()))
        .collect(Collectors.toUnmodifiableSet());
  }
}
