package taperbook.prosecheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import taperbook.prosecheck.TypedFigure.Verdict;

/**
 * How often the verdicts agree with those of a careful reader, on sentences labelled by hand; see
 * {@code src/test/resources/claims/README.md}. The floors were set before there was a matcher.
 */
final class CorpusTest {
  private static final double MIN_PRECISION = 0.97;
  private static final double MIN_RECALL = 0.7;

  @Test
  void few_false_contradictions_and_most_true_ones_are_reported() throws IOException {
    List<String> report =
        new ArrayList<>(
            List.of(
                "| part | verdict | right | wrong | missed | precision | recall |",
                "|---|---|---|---|---|---|---|"));
    List<String> mistakes = new ArrayList<>();
    for (String half : List.of("tuning", "held-out", "fresh")) {
      for (Verdict verdict : List.of(Verdict.CONTRADICTED, Verdict.SUPPORTED)) {
        Score score = Score.of(verdict, Corpus.half(half));
        report.add(score.row(half));
        // Mistakes in the held-out half stay hidden from those who tune the rules.
        mistakes.addAll(!half.equals("held-out") ? score.mistakes() : List.of());
      }
    }
    report.add("");
    mistakes.forEach(m -> report.add("* " + m.replace("\n", " / ")));
    Files.createDirectories(Path.of("target"));
    Files.writeString(
        Path.of("target/claims.md"), String.join("\n", report) + "\n", StandardCharsets.UTF_8);
    for (String half : List.of("tuning", "held-out", "fresh")) {
      Score contradicted = Score.of(Verdict.CONTRADICTED, Corpus.half(half));
      Score supported = Score.of(Verdict.SUPPORTED, Corpus.half(half));
      assertThat(contradicted.precision()).as(half).isGreaterThanOrEqualTo(MIN_PRECISION);
      assertThat(contradicted.recall()).as(half).isGreaterThanOrEqualTo(MIN_RECALL);
      assertThat(supported.precision()).as(half).isGreaterThanOrEqualTo(MIN_PRECISION);
      assertThat(supported.recall()).as(half).isGreaterThanOrEqualTo(MIN_RECALL);
    }
  }

  @Test
  void the_corpus_is_large_enough_and_has_both_verdicts_in_both_halves() {
    assertThat(Corpus.all()).hasSizeGreaterThanOrEqualTo(200);
    for (String half : List.of("tuning", "held-out")) {
      for (Verdict verdict : List.of(Verdict.CONTRADICTED, Verdict.SUPPORTED)) {
        assertThat(Corpus.half(half).stream().flatMap(p -> p.labels().stream()))
            .filteredOn(l -> l.verdict() == verdict)
            .hasSizeGreaterThan(40);
      }
    }
  }
}
