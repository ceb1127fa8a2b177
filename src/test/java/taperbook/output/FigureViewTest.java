package taperbook.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import taperbook.chart.render.Figure;

class FigureViewTest {
  private final AtomicInteger drawings = new AtomicInteger();

  private final Figure figure =
      Figure.of(
          "curve",
          "A curve",
          "It falls.",
          "A falling line",
          (g, style) -> {
            drawings.incrementAndGet();
            return List.of();
          });

  @Test
  void reading_the_texts_renders_nothing() {
    Map<?, ?> view = view(true);

    assertThat(view.get("caption")).isEqualTo("It falls.");
    assertThat(view.get("alt")).isEqualTo("A curve. A falling line");
    assertThat(view.containsKey("svg")).isTrue();
    assertThat(view.get("nothing of it")).isNull();
    assertThat(drawings).hasValue(0);
  }

  @Test
  void a_text_alternative_starts_with_the_finding_followed_by_the_drawing() {
    assertThat(InventedReport.job().figures())
        .isNotEmpty()
        .allSatisfy(
            f -> {
              Map<?, ?> shown = new FigureView(f, false);
              assertThat(String.valueOf(shown.get("alt")))
                  .startsWith(f.title() + ". ")
                  .endsWith(f.textAlternative());
            });
  }

  @Test
  void each_drawing_is_rendered_once() {
    Map<?, ?> view = view(true);
    for (int i = 0; i < 3; i++) {
      assertThat(view.get("svg")).isNotNull();
      assertThat(view.get("narrow")).isNotNull();
    }

    assertThat(drawings).hasValue(2);
    assertThat(view(true).get("svg")).isNotNull();
    assertThat(drawings).hasValue(2);
  }

  @Test
  void without_narrow_screens_there_is_one_drawing() {
    Map<?, ?> view = view(false);

    assertThat(view.entrySet()).hasSize(8);
    assertThat(drawings).hasValue(1);
  }

  private Map<?, ?> view(boolean narrow) {
    return new FigureView(figure, narrow);
  }
}
