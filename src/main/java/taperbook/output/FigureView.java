package taperbook.output;

import java.util.AbstractMap;
import java.util.LinkedHashMap;
import java.util.List;
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
 * A chart as a template prints it. What has to be drawn for it is drawn when the template asks: a
 * page for paper shows neither of the two drawings for browsers.
 */
final class FigureView extends AbstractMap<String, Object> {
  private static final Pattern WORDS = Pattern.compile("<(title|desc) [^>]*>[^<]*</\\1>\n");

  private final Map<String, Supplier<Object>> parts = new LinkedHashMap<>();
  private final Map<String, Object> asked = new LinkedHashMap<>();

  /**
   * A view.
   *
   * @param narrow whether there is a drawing for narrow screens too
   */
  private FigureView(Figure figure, boolean narrow) {
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

  /** A drawing without its own words: the page has them at the element around it. */
  private static String inPage(String svg) {
    return WORDS
        .matcher(svg)
        .replaceAll("")
        .replaceFirst(" role=\"img\" aria-labelledby=\"[^\"]*\"", "");
  }

  /** The finding first: whoever stops listening then has what the chart is there for. */
  private static String alt(Figure figure) {
    String finding = figure.title();
    String end = finding.endsWith(".") ? " " : ". ";
    return finding + end + figure.textAlternative();
  }

  /**
   * Views by the name of the figure, in the order of the figures.
   *
   * @param narrow whether there are drawings for narrow screens too
   */
  static Map<String, Object> all(List<Figure> figures, boolean narrow) {
    Map<String, Object> views = new LinkedHashMap<>();
    figures.forEach(figure -> views.put(figure.id(), new FigureView(figure, narrow)));
    return views;
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
