package taperbook.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import taperbook.chart.render.Figure;
import taperbook.chart.render.Painting;

/** How often a report paints its charts: once for each file or page that shows one. */
@Tag("slow")
final class PaintingsTest {
  private static final ReportJob JOB = InventedReport.job();

  private final Map<String, Integer> painted = new ConcurrentHashMap<>();

  private Figure counted(Figure figure) {
    Painting painting = figure.painting();
    return Figure.of(
        figure.id(),
        figure.title(),
        figure.caption(),
        figure.textAlternative(),
        (g, style) -> {
          painted.merge(figure.id(), 1, Integer::sum);
          return painting.paint(g, style);
        });
  }

  private List<Figure> counted() {
    return JOB.figures().stream().map(this::counted).toList();
  }

  private static ReportJob with(List<Figure> figures) {
    return new ReportJob(
        JOB.results(),
        figures,
        JOB.templates(),
        JOB.inputs(),
        JOB.attached(),
        JOB.tables(),
        JOB.corrections(),
        JOB.date(),
        JOB.program());
  }

  /**
   * SVG, SVG for narrow screens, PNG, and PDF; the shared one has two more pictures, and the other
   * is not in the PDF.
   */
  @Test
  void a_chart_is_painted_once_for_each_picture() {
    assertThat(ReportWriter.write(with(counted())).isUsable()).isTrue();
    assertThat(painted).isEqualTo(Map.of("power-over-soc", 6, "soc-over-time", 3));
  }

  @Test
  void a_second_report_with_the_same_figures_paints_only_its_pdf() {
    List<Figure> figures = counted();
    ReportFiles first = ReportWriter.write(with(figures)).value().orElseThrow();
    painted.clear();
    ReportFiles second = ReportWriter.write(with(figures)).value().orElseThrow();
    assertThat(painted).isEqualTo(Map.of("power-over-soc", 1));
    assertThat(pictures(second)).isEqualTo(pictures(first)).isNotEmpty();
  }

  private static Map<String, List<Byte>> pictures(ReportFiles files) {
    return files.all().entrySet().stream()
        .filter(f -> f.getKey().startsWith("figures/"))
        .collect(Collectors.toMap(Map.Entry::getKey, f -> bytes(f.getValue())));
  }

  private static List<Byte> bytes(byte[] all) {
    List<Byte> list = new ArrayList<>();
    for (byte each : all) {
      list.add(each);
    }
    return list;
  }
}
