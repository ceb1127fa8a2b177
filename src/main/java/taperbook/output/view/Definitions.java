package taperbook.output.view;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import taperbook.result.Assumption;
import taperbook.result.Method;
import taperbook.result.Numbers;

/** The methods that some numbers use, and their assumptions. */
public final class Definitions {
  private static final int LETTERS = 26;

  private final Set<Method> methods = EnumSet.noneOf(Method.class);
  private final Set<Assumption> assumptions = EnumSet.noneOf(Assumption.class);

  /** A method, with the marks of its assumptions. */
  public record Meaning(String title, String definition, List<String> assumptions) {}

  /** An assumption. */
  public record Premise(String mark, String sentence, String source) {}

  private Definitions() {}

  /** Collects the definitions of all numbers of some sessions. */
  public static Definitions of(List<Numbers> sessions) {
    Definitions all = new Definitions();
    sessions.forEach(s -> s.all().forEach(n -> all.methods.add(n.method())));
    all.methods.forEach(m -> all.assumptions.addAll(m.assumptions()));
    return all;
  }

  /** Returns every method in use, with the marks of its assumptions. */
  public List<Meaning> methods() {
    List<Assumption> order = new ArrayList<>(assumptions);
    return methods.stream()
        .map(
            m ->
                new Meaning(
                    m.title(),
                    m.definition(),
                    m.assumptions().stream()
                        .map(order::indexOf)
                        .sorted()
                        .map(Definitions::letter)
                        .toList()))
        .toList();
  }

  /** Returns every assumption of these methods, lettered. */
  public List<Premise> assumptions() {
    List<Premise> list = new ArrayList<>();
    for (Assumption a : assumptions) {
      list.add(new Premise(letter(list.size()), a.sentence(), a.source()));
    }
    return list;
  }

  /** Returns a to z, then aa, ab and so on. */
  private static String letter(int index) {
    String last = String.valueOf((char) ('a' + index % LETTERS));
    return index < LETTERS ? last : letter(index / LETTERS - 1) + last;
  }
}
