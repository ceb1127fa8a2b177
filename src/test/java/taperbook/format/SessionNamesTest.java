package taperbook.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import taperbook.quantity.Interval;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.Fact;
import taperbook.session.Facts;
import taperbook.session.HowKnown;
import taperbook.session.RowRef;
import taperbook.session.Session;
import taperbook.session.Trace;

final class SessionNamesTest {
  @Test
  void common_parts_of_all_vehicles_are_omitted() {
    assertThat(
            labels(
                session("a", "Northmoor Finch, second battery revision", "2026-04-18"),
                session("b", "Northmoor Finch, first battery revision", "2025-05-10")))
        .containsExactly("A second battery revision", "B first battery revision");
  }

  @Test
  void different_vehicles_keep_their_names() {
    assertThat(
            labels(
                session("a", "Northmoor Finch", "2026-04-18"),
                session("b", "Veldt Carrier", "2026-05-02")))
        .containsExactly("A Northmoor Finch", "B Veldt Carrier");
  }

  @Test
  void the_day_distinguishes_sessions_of_one_vehicle() {
    assertThat(
            labels(
                session("a", "Northmoor Finch", "2026-04-18"),
                session("b", "Northmoor Finch", "2026-05-02")))
        .containsExactly("A Northmoor Finch, 18 April 2026", "B Northmoor Finch, 2 May 2026");
  }

  @Test
  void the_folder_distinguishes_sessions_of_one_day() {
    assertThat(
            labels(
                session("finch-morning", "Northmoor Finch", "2026-04-18"),
                session("finch-evening", "Northmoor Finch", "2026-04-18")))
        .containsExactly("A finch-morning", "B finch-evening");
  }

  @Test
  void letters_follow_the_position() {
    SessionNames names =
        SessionNames.of(
            List.of(
                session("a", "Northmoor Finch", "2026-04-18"),
                session("b", "Veldt Carrier", "2026-05-02")));
    assertThat(names.letterOf("b")).isEqualTo("B");
    assertThatIllegalArgumentException().isThrownBy(() -> names.letterOf("c"));
  }

  private static List<String> labels(Session... sessions) {
    SessionNames names = SessionNames.of(List.of(sessions));
    return List.of(names.label(0).replace('\u00a0', ' '), names.label(1).replace('\u00a0', ' '));
  }

  private static Session session(String name, String vehicle, String date) {
    Map<ConditionItem, Fact> facts = new EnumMap<>(ConditionItem.class);
    String file = "sessions/" + name + "/conditions.csv";
    facts.put(ConditionItem.VEHICLE, fact(file, 3, vehicle));
    facts.put(ConditionItem.DATE, fact(file, 2, date));
    Trace soc =
        new Trace("readings.csv", new double[] {0}, new double[] {10}, new int[] {2}, 0.5, 0.5);
    return new Session(
        name,
        new Facts<>(file, ConditionItem.class, facts),
        Map.of(Channel.SOC, soc),
        List.of(),
        Interval.exactly(0));
  }

  private static Fact fact(String file, int line, String written) {
    return new Fact(written, "", Optional.empty(), HowKnown.MEASURED, new RowRef(file, line));
  }
}
