package taperbook.verify;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import taperbook.result.MovedNumber;

/**
 * Finds the cause of a number's change: the input change without which it would not have moved.
 *
 * <p>Each change is undone separately, and the numbers are recomputed. A change counts as a cause
 * if undoing it reverts at least a certain share of the move; the change that reverts the most
 * always counts.
 */
public final class ChangeCauses {
  /** Minimum share of a move that a change must revert to be named beside another. */
  private static final double SHARE = 0.3;

  private final Resampling before;
  private final Resampling after;
  private final Map<String, Resampling> undone = new LinkedHashMap<>();
  private final List<String> unknown = new ArrayList<>();

  public ChangeCauses(Resampling before, Resampling after) {
    this.before = before;
    this.after = after;
  }

  /** Adds the result of undoing a change. */
  public void enter(String words, Resampling without) {
    undone.put(words, without);
  }

  /** Adds a change that cannot be undone separately. */
  public void enter(String words) {
    unknown.add(words);
  }

  /** Returns the numbers with their causes. */
  public List<MovedNumber> name(List<MovedNumber> moved) {
    return moved.stream().map(m -> m.withCauses(of(m))).toList();
  }

  private List<String> of(MovedNumber moved) {
    if (undone.size() + unknown.size() <= 1) {
      return all();
    }
    String key = PublishedNumber.key(moved.id(), moved.session(), moved.against());
    ResampledNumber now = after.number(key);
    Map<String, ResampledNumber> back = new LinkedHashMap<>();
    undone.forEach((words, without) -> back.put(words, without.number(key)));
    double max = back.values().stream().mapToDouble(now::distance).max().orElse(0);
    double way = now.distance(before.number(key));
    if (!(max >= SHARE * way)) {
      // No single change is the cause: it is all of them together, or one that cannot be undone.
      return unknown.isEmpty() ? all() : unknown;
    }
    List<String> causes = new ArrayList<>();
    back.forEach(
        (words, without) -> {
          double distance = now.distance(without);
          if (distance >= max || (now.isApart(without, 0, 0) && distance >= SHARE * way)) {
            causes.add(words);
          }
        });
    return causes;
  }

  private List<String> all() {
    List<String> all = new ArrayList<>(undone.keySet());
    all.addAll(unknown);
    return all;
  }
}
