package taperbook.format;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import taperbook.session.ConditionItem;
import taperbook.session.Session;

/**
 * Display names of compared sessions in charts, tables and sentences: a letter, and as few words as
 * distinguish them.
 */
public final class SessionNames {
  /** Maximum number of sessions that letters and line styles distinguish. */
  public static final int MOST = 6;

  private final List<Session> sessions;
  private final List<String> words;

  private SessionNames(List<Session> sessions, List<String> words) {
    this.sessions = sessions;
    this.words = words;
  }

  /** Creates names for the sessions of a report, the reported one first. */
  public static SessionNames of(List<Session> sessions) {
    List<String> words = withoutCommonStart(sessions.stream().map(Session::vehicle).toList());
    if (new HashSet<>(words).size() < words.size()) {
      words = sessions.stream().map(SessionNames::dated).toList();
    }
    if (new HashSet<>(words).size() < words.size()) {
      words = sessions.stream().map(Session::name).toList();
    }
    return new SessionNames(List.copyOf(sessions), words);
  }

  /** Returns the letter of a session by its index: A for the reported one. */
  public static String letter(int index) {
    return String.valueOf((char) ('A' + index));
  }

  /** Returns the letter of a session by its name. */
  public String letterOf(String session) {
    for (int i = 0; i < sessions.size(); i++) {
      if (sessions.get(i).name().equals(session)) {
        return letter(i);
      }
    }
    throw new IllegalArgumentException("not a session of this report: " + session);
  }

  /**
   * Returns what distinguishes a session from the others, such as {@code second battery revision}.
   */
  public String words(int index) {
    return words.get(index);
  }

  /** Returns the words for use inside a sentence: with an article unless they are a name. */
  public String inSentence(int index) {
    String name = words(index);
    return Character.isLowerCase(name.charAt(0)) ? Labels.of("answer.the", name) : name;
  }

  /** Returns letter and words, such as {@code A second battery revision}. */
  public String label(int index) {
    return letter(index) + " " + words(index);
  }

  /**
   * Returns the names of a report's sessions at the top of a column or a lane: a single one by its
   * vehicle, several by letter and words.
   */
  public static List<String> heads(List<Session> sessions) {
    if (sessions.size() == 1) {
      return List.of(sessions.get(0).vehicle());
    }
    SessionNames names = of(sessions);
    return IntStream.range(0, sessions.size()).mapToObj(names::label).toList();
  }

  private static String dated(Session session) {
    Optional<String> date =
        session.conditions().text(ConditionItem.DATE).map(NumberFormatter::dateOrAsIs);
    return session.vehicle() + date.map(d -> ", " + d).orElse("");
  }

  /** Removes the leading comma-separated parts that all vehicles share. */
  private static List<String> withoutCommonStart(List<String> vehicles) {
    List<List<String>> parts =
        vehicles.stream().map(v -> Arrays.asList(v.split(",\\s*", -1))).toList();
    int shared = 0;
    while (sharePart(parts, shared)) {
      shared++;
    }
    List<String> rest = new ArrayList<>();
    for (List<String> part : parts) {
      rest.add(String.join(", ", part.subList(shared, part.size())));
    }
    return rest;
  }

  private static boolean sharePart(List<List<String>> parts, int index) {
    return parts.stream().allMatch(p -> p.size() > index + 1)
        && parts.stream().map(p -> p.get(index)).distinct().count() == 1;
  }
}
