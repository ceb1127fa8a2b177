package taperbook.output.article;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.diagnostics.Checked;
import taperbook.output.view.Unwrapped;

final class RecordWrapperTest {
  private record Part(String name, List<String> rows) {}

  private record View(
      String label, boolean present, Optional<Part> other, Part part, @Unwrapped Part unwrapped)
      implements Supplier<String> {
    static final View OF_ONE =
        new View("x < y", true, Optional.empty(), new Part("inner", List.of()), part("unwrapped"));

    static Part part(String name) {
      return new Part(name, List.of("1", "2"));
    }

    /** Not a component. */
    @Override
    public String get() {
      return label;
    }
  }

  private static Checked<String> page(String template) {
    return new RestrictedTemplates(Map.of("page.ftlh", template))
        .page("page.ftlh", Map.of("view", View.OF_ONE));
  }

  @Test
  void components_are_read_by_name_and_those_of_an_unwrapped_record_as_its_own() {
    assertThat(
            page("${view.label}, ${view.present?c}, ${view.part.name}, ${view.name}"
                    + "<#list view.rows as r>, ${r}</#list>")
                .value())
        .contains("x &lt; y, true, inner, unwrapped, 1, 2");
  }

  @Test
  void an_empty_component_is_missing() {
    assertThat(
            page("${view.other???c}, ${view.unwrapped???c}, ${(view.other.name)!\"none\"}").value())
        .contains("false, false, none");
    assertThat(page("${view?keys?join(\" \")}").value()).contains("label present part name rows");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "${view.class}",
        "${view.getClass()}",
        "${view.class.protectionDomain}",
        "${view.label()}",
        "${view.get}",
        "${view.get()}",
        "${view.hashCode()}",
        "${view?api.label()}",
        "${view?api.class}",
        "${view.rows?api.size()}",
        "${view.part.class}",
        "${view.rows.class}",
        "${view.OF_ONE}",
        "${view}"
      })
  void nothing_else_of_a_record_is_reachable(String template) {
    Checked<String> page = page(template);
    assertThat(page.problems()).isNotEmpty();
  }

  @Test
  void other_objects_cannot_be_printed_or_passed() {
    assertThat(
            new RestrictedTemplates(Map.of("page.ftlh", "${view}"))
                .page("page.ftlh", Map.of("view", new Object()))
                .problems())
        .isNotEmpty();
  }
}
