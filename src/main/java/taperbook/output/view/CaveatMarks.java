package taperbook.output.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import taperbook.format.SessionNames;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;
import taperbook.session.Caveat;

/**
 * The caveats of a report, numbered by kind, so that numbers can refer to them by mark. Equivalent
 * caveats of several sessions share one mark.
 */
public final class CaveatMarks {
  private final Map<Object, Integer> marks = new LinkedHashMap<>();
  private final List<Item> items = new ArrayList<>();
  private final Map<Caveat.Topic, List<Item>> topics = new EnumMap<>(Caveat.Topic.class);

  /** A link from a number to its caveats, with consecutive marks merged. */
  public record Mark(String text, String anchor) {}

  /** A caveat with its mark. */
  public record Item(String mark, String anchor, String sentence) {}

  /** The caveats of a topic. */
  record Topic(String topic, List<Item> items) {}

  CaveatMarks(ReportResult result) {
    Map<Caveat, Set<Integer>> sessions = new LinkedHashMap<>();
    int count = result.sessions().size();
    for (int i = 0; i < count; i++) {
      int session = i;
      all(result.sessions().get(i))
          .forEach(c -> sessions.computeIfAbsent(c, x -> new LinkedHashSet<>()).add(session));
    }
    Comparator<Caveat> byTopic = Comparator.comparing(c -> c.kind().topic());
    sessions.keySet().stream()
        .sorted(byTopic.thenComparing(Caveat::kind))
        .collect(Collectors.groupingBy(CaveatMarks::alike, LinkedHashMap::new, Collectors.toList()))
        .forEach(
            (key, caveats) -> {
              String facts =
                  caveats.stream()
                      .map(c -> letters(sessions.getOrDefault(c, Set.of()), count) + c.fact())
                      .collect(Collectors.joining(" "));
              add(key, caveats.get(0), facts);
            });
  }

  private void add(Object key, Caveat first, String facts) {
    int mark = items.size() + 1;
    String meaning = first.meaning().map(m -> " " + m.text()).orElse("");
    Item item = new Item(String.valueOf(mark), "caveat-" + mark, facts + meaning);
    marks.put(key, mark);
    items.add(item);
    topics.computeIfAbsent(first.kind().topic(), t -> new ArrayList<>()).add(item);
  }

  /** Returns the key that caveats of one mark share. */
  private static Object alike(Caveat caveat) {
    return caveat.meaning().isEmpty()
        ? caveat
        : new Caveat(caveat.kind(), caveat.meaning().get(), caveat.meaning());
  }

  /** Returns all caveats of a session: its own and those of its numbers. */
  static Set<Caveat> all(SessionResult session) {
    Set<Caveat> all = new LinkedHashSet<>(session.caveats());
    session.numbers().all().forEach(n -> all.addAll(n.caveats()));
    return all;
  }

  /** Returns the marks of a number. */
  List<Mark> of(List<Caveat> caveats) {
    List<Integer> sorted =
        caveats.stream().map(c -> marks.getOrDefault(alike(c), 0)).distinct().sorted().toList();
    List<Mark> runs = new ArrayList<>();
    int start = 0;
    for (int i = 1; i <= sorted.size(); i++) {
      if (i == sorted.size() || sorted.get(i) != sorted.get(i - 1) + 1) {
        int first = sorted.get(start);
        int last = sorted.get(i - 1);
        String joiner = last == first + 1 ? ", " : "\u2013";
        String text = first == last ? "" + first : first + joiner + last;
        runs.add(new Mark(text, "caveat-" + first));
        start = i;
      }
    }
    return runs;
  }

  /** Returns the caveats of a number individually, in order of their marks. */
  List<Item> sentences(List<Caveat> caveats) {
    return caveats.stream()
        .map(c -> marks.getOrDefault(alike(c), 0))
        .distinct()
        .sorted()
        .filter(mark -> mark > 0)
        .map(mark -> items.get(mark - 1))
        .toList();
  }

  /** Returns the caveats by topic, in order. */
  List<Topic> byTopic() {
    return topics.entrySet().stream()
        .map(e -> new Topic(e.getKey().title(), e.getValue()))
        .toList();
  }

  /**
   * Returns the letters of the sessions that a caveat concerns; empty if it concerns all of them.
   */
  private static String letters(Set<Integer> sessions, int count) {
    return sessions.size() == count
        ? ""
        : sessions.stream().map(SessionNames::letter).collect(Collectors.joining(", ")) + ": ";
  }
}
