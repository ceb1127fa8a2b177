package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import taperbook.diagnostics.Problem;
import taperbook.output.article.ArticleText;
import taperbook.result.ReportResult;
import taperbook.workspace.StoppedException;

/** Replays the findings of a fuzzer and checks that the targets work. */
@Tag("slow")
final class FuzzTest {
  private static final int MUTATIONS = 20;

  @ParameterizedTest
  @EnumSource(FuzzTarget.class)
  @Timeout(value = 120, unit = TimeUnit.SECONDS)
  void earlier_findings_stay_fixed(FuzzTarget target) throws IOException {
    for (byte[] input : Fuzzing.found(target)) {
      take(target, input);
    }
    assertThat(target.file).isNotBlank();
  }

  @ParameterizedTest
  @EnumSource(value = FuzzTarget.class, mode = Mode.EXCLUDE, names = "MEASURED")
  @Timeout(value = 120, unit = TimeUnit.SECONDS)
  void corrupted_bytes_are_handled(FuzzTarget target) {
    byte[] valid = Fuzzing.valid(target);
    Random random = new Random(20261125);
    for (int i = 0; i < MUTATIONS; i++) {
      byte[] corrupted = valid.clone();
      for (int k = 0; k <= random.nextInt(4); k++) {
        corrupted[random.nextInt(corrupted.length)] = (byte) random.nextInt(256);
      }
      take(target, corrupted);
    }
  }

  @Test
  void deep_nesting_in_an_article_is_reported() {
    String most = "> ".repeat(50) + "deep";
    assertThat(problems(most)).isEmpty();
    for (String sign : List.of("> ", "- ", "* a\n\n  ")) {
      assertThat(problems(sign.repeat(4000))).as(sign).hasSizeLessThanOrEqualTo(1);
    }
    assertThat(problems("> ".repeat(80) + "deeper"))
        .containsExactly(
            "reports/look.md: found rows of signs such as > - * [ that nest too deep or are too"
                + " many to be taken in; expected at most 60 levels of quotations, lists and"
                + " emphasis within each other. To fix: take out those rows of signs."
                + " [template-broken]");
  }

  @Test
  void deep_nesting_of_instructions_is_reported() {
    assertThat(problems("<#if true>".repeat(100_000)))
        .singleElement()
        .asString()
        .contains("an instruction that cannot be carried out: instructions are nested");
  }

  @Test
  void every_finding_belongs_to_a_target() throws IOException {
    try (Stream<Path> all = Files.list(Fuzzing.FOUND)) {
      assertThat(all.filter(Files::isDirectory).map(f -> FuzzTarget.of(f.toFile().getName())))
          .isNotEmpty();
    }
  }

  private static List<String> problems(String article) {
    ReportResult result = FuzzProject.measuredWith(article);
    return new ArticleText(result, Set.of())
        .parts().problems().stream().map(Problem::sentence).toList();
  }

  private static void take(FuzzTarget target, byte[] input) {
    try {
      target.take(input);
    } catch (StoppedException e) {
      assertThat(e).hasMessageMatching("(?s).{10,}");
    } catch (RuntimeException | StackOverflowError e) {
      throw new AssertionError(
          target + " with " + new String(input, StandardCharsets.ISO_8859_1), e);
    }
  }
}
