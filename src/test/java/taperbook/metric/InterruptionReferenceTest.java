package taperbook.metric;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import taperbook.input.Given;
import taperbook.quantity.Interval;
import taperbook.result.Event;
import taperbook.result.ReportNumber;
import taperbook.result.SessionResult;
import taperbook.session.Caveat;
import taperbook.session.Session;

/** A charge with an interruption of 247 s; see {@code reference/interruption/SOURCE.md}. */
final class InterruptionReferenceTest {
  private static final SessionResult RESULT = Sessions.measure(session("")).main();

  private static String file(String name) {
    try (InputStream in =
        InterruptionReferenceTest.class.getResourceAsStream("/reference/interruption/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(name, e);
    }
  }

  private static Session session(String more) {
    return Given.session(
            file("readings.csv"),
            Given.CONDITIONS + "display rounds,nearest,,\nrows written,at set times,,\n" + more)
        .value()
        .orElseThrow();
  }

  @Test
  void every_interval_contains_the_true_value_with_and_without_the_interruption() {
    List<String> lines = file("expected.csv").lines().skip(1).toList();
    assertThat(lines).hasSizeGreaterThan(15);
    assertThat(lines)
        .allSatisfy(
            line -> {
              String[] cells = line.split(",", -1);
              Interval bounds = RESULT.numbers().estimate(cells[0]).orElseThrow().bounds();
              assertThat(Double.parseDouble(cells[1]))
                  .as(cells[0])
                  .isBetween(bounds.low(), bounds.high());
              assertThat(bounds.width()).as(cells[0]).isLessThan(70);
            });
  }

  @Test
  void the_interruption_starts_and_ends_within_its_gaps_and_has_its_note() {
    Event event = RESULT.events().get(1);
    assertThat(event.kind()).isEqualTo(Event.Kind.INTERRUPTION);
    assertThat(event.start()).isEqualTo(new Interval(475, 500));
    assertThat(event.end()).isEqualTo(new Interval(722, 740));
    assertThat(event.note()).isEqualTo("station showed a fault; lamp red");
    assertThat(event.rows().get(0).line()).isEqualTo(11);
    assertThat(RESULT.events()).extracting(Event::note).doesNotHaveDuplicates().hasSize(4);
  }

  @Test
  void its_caveat_comes_first_and_only_for_affected_numbers() {
    Caveat first = RESULT.caveats().get(0);
    assertThat(first.kind()).isEqualTo(Caveat.Kind.INTERRUPTION);
    assertThat(first.sentence().replace('\u00a0', ' '))
        .isEqualTo(
            "Charging was interrupted at 35 % of charge: it stood still for between 3 min 42 s and"
                + " 4 min 25 s, beginning between 7 min 55 s and 8 min 20 s after plugging in, where"
                + " the tester noted \u201cstation showed a fault; lamp red\u201d. Times and averages"
                + " across it include it and say so; where they are given without it, what the power"
                + " lost by climbing again is not taken off. The fitted segments leave its readings"
                + " out.");
    Set<String> concerned =
        RESULT.numbers().all().stream()
            .filter(n -> n.caveats().stream().anyMatch(c -> c.kind() == Caveat.Kind.INTERRUPTION))
            .map(ReportNumber::id)
            .collect(Collectors.toSet());
    assertThat(concerned)
        .contains("time_soc_10_80", "time_to_soc_50", "session_time", "average_power_session")
        .doesNotContain("time_to_soc_20", "time_to_soc_30", "peak_power", "energy_per_soc");
  }

  @Test
  void labels_state_which_numbers_include_it() {
    assertThat(RESULT.numbers().get("time_soc_10_80").label())
        .isEqualTo("Time from 10 % to 80 %, interruption included");
    assertThat(RESULT.numbers().get("time_soc_10_80_without_interruptions").label())
        .isEqualTo("Time from 10 % to 80 %, without interruptions");
    assertThat(RESULT.numbers().get("time_to_soc_20").label())
        .isEqualTo("Time from plugging in to 20 %");
    assertThat(RESULT.numbers().find("time_to_soc_20_without_interruptions")).isEmpty();
  }

  @Test
  void the_fitted_segments_are_independent_of_it() {
    // A warm-up climb, the shallow fall to 45 %, and the taper of 1.8 kW per 1 %.
    assertThat(RESULT.numbers().get("taper_segments").estimate().orElseThrow().value())
        .isEqualTo(3);
  }
}
