package taperbook.output.view;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import taperbook.result.Assumption;
import taperbook.result.Method;
import taperbook.result.Numbers;

/** The methods that some numbers use, and their assumptions. */
public final class Definitions {
  private static final int LETTERS = 26;

  private final Set<Method> methods = EnumSet.noneOf(Method.class);
  private final Set<Assumption> assumptions = EnumSet.noneOf(Assumption.class);

  private Definitions() {}

  /** Collects the definitions of all numbers of some sessions. */
  public static Definitions of(List<Numbers> sessions) {
    Definitions all = new Definitions();
    sessions.forEach(s -> s.all().forEach(n -> all.methods.add(n.method())));
    all.methods.forEach(m -> all.assumptions.addAll(m.assumptions()));
    return all;
  }

  /** Returns every method in use, with the marks of its assumptions. */
  public List<Map<String, Object>> methods() {
    List<Assumption> order = new ArrayList<>(assumptions);
    return methods.stream()
        .map(
            m ->
                Map.<String, Object>of(
                    "title",
                    m.title(),
                    "definition",
                    m.definition(),
                    "assumptions",
                    m.assumptions().stream()
                        .map(order::indexOf)
                        .sorted()
                        .map(Definitions::letter)
                        .toList()))
        .toList();
  }

  /** Returns every assumption of these methods, lettered. */
  public List<Map<String, Object>> assumptions() {
    List<Map<String, Object>> list = new ArrayList<>();
    for (Assumption a : assumptions) {
      list.add(
          Map.of(
              "mark", letter(list.size()),
              "sentence", a.sentence(),
              "source", a.source()));
    }
    return list;
  }

  /** Returns a to z, then aa, ab and so on. */
  private static String letter(int index) {
    String last = String.valueOf((char) ('a' + index % LETTERS));
    return index < LETTERS ? last : letter(index / LETTERS - 1) + last;
  }
}
