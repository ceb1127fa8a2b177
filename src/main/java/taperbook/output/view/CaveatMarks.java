package taperbook.output.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
  private final Map<Caveat, Set<Integer>> sessions = new LinkedHashMap<>();
  private final Map<Integer, Item> items = new LinkedHashMap<>();
  private final int sessionCount;

  /** A link from a number to its caveats, with consecutive marks merged. */
  public record Mark(String text, String anchor) {}

  /** A caveat with its mark. */
  public record Item(String mark, String anchor, String sentence) {}

  /** The caveats of a topic. */
  record Topic(String topic, List<Item> items) {}

  CaveatMarks(ReportResult result) {
    this.sessionCount = result.sessions().size();
    for (int i = 0; i < sessionCount; i++) {
      int session = i;
      all(result.sessions().get(i))
          .forEach(c -> sessions.computeIfAbsent(c, x -> new LinkedHashSet<>()).add(session));
    }
    sorted().forEach(c -> marks.putIfAbsent(alike(c), marks.size() + 1));
    alike()
        .forEach(
            (key, caveats) -> {
              int mark = Objects.requireNonNull(marks.get(key));
              items.put(mark, item(String.valueOf(mark), caveats));
            });
  }

  private List<Caveat> sorted() {
    Comparator<Caveat> byTopic = Comparator.comparing(c -> c.kind().topic());
    return sessions.keySet().stream().sorted(byTopic.thenComparing(Caveat::kind)).toList();
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
        .flatMap(mark -> Stream.ofNullable(items.get(mark)))
        .toList();
  }

  /** Returns the caveats by topic, in order. */
  List<Topic> byTopic() {
    Map<Caveat.Topic, List<Item>> byTopic = new EnumMap<>(Caveat.Topic.class);
    alike()
        .forEach(
            (key, caveats) ->
                byTopic
                    .computeIfAbsent(caveats.get(0).kind().topic(), k -> new ArrayList<>())
                    .add(Objects.requireNonNull(items.get(marks.get(key)))));
    List<Topic> topics = new ArrayList<>();
    byTopic.forEach((topic, items) -> topics.add(new Topic(topic.title(), items)));
    return topics;
  }

  private Map<Object, List<Caveat>> alike() {
    return sorted().stream()
        .collect(
            Collectors.groupingBy(CaveatMarks::alike, LinkedHashMap::new, Collectors.toList()));
  }

  private Item item(String mark, List<Caveat> caveats) {
    String facts = caveats.stream().map(c -> of(c) + c.fact()).collect(Collectors.joining(" "));
    String meaning = caveats.get(0).meaning().map(m -> " " + m.text()).orElse("");
    return new Item(mark, "caveat-" + mark, facts + meaning);
  }

  /**
   * Returns the letters of the sessions that a caveat concerns; empty if it concerns all of them.
   */
  private String of(Caveat caveat) {
    Set<Integer> places = sessions.getOrDefault(caveat, Set.of());
    return places.size() == sessionCount
        ? ""
        : places.stream().map(SessionNames::letter).collect(Collectors.joining(", ")) + ": ";
  }
}
