package taperbook.metric.comparison;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import taperbook.quantity.Estimate;
import taperbook.result.Drives;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.Session;
import taperbook.session.Trace;

/**
 * Determines which conditions of sessions differ. Limits are common practice without a source.
 * Unknown conditions do not count as different.
 */
public final class ConditionSimilarity {
  /** States of charge at the start within this difference are similar, %. */
  private static final double START_PERCENT = 5;

  /** A station rated above the highest power by this factor does not limit the power. */
  private static final double HEADROOM = 1.2;

  private static final List<ConditionItem> IN_WORDS =
      List.of(ConditionItem.PRECONDITIONED, ConditionItem.STATION_SHARED);

  private ConditionSimilarity() {}

  /** Returns the conditions in which sessions differ: temperatures, preconditioning, station. */
  public static List<ConditionItem> unlike(List<Session> sessions) {
    List<ConditionItem> unlike = new ArrayList<>();
    within(
        sessions, ConditionItem.BATTERY_TEMPERATURE_AT_START, Drives.SIMILAR_TEMPERATURE, unlike);
    within(sessions, ConditionItem.AMBIENT_TEMPERATURE, Drives.SIMILAR_TEMPERATURE, unlike);
    if (mayLimit(sessions)) {
      within(sessions, ConditionItem.STATION_RATED_POWER, 0, unlike);
    }
    for (ConditionItem item : IN_WORDS) {
      long answers =
          sessions.stream().flatMap(s -> s.conditions().text(item).stream()).distinct().count();
      if (answers > 1) {
        unlike.add(item);
      }
    }
    return unlike;
  }

  private static void within(
      List<Session> sessions, ConditionItem item, double limit, List<ConditionItem> unlike) {
    List<Double> values =
        sessions.stream()
            .flatMap(s -> s.conditions().amount(item).stream())
            .map(Estimate::value)
            .toList();
    if (range(values) > limit + 1e-9) {
      unlike.add(item);
    }
  }

  /**
   * Returns true if the rating of the weakest station is close to the highest power of any session.
   */
  private static boolean mayLimit(List<Session> sessions) {
    double peak =
        sessions.stream()
            .flatMap(s -> s.trace(Channel.POWER).stream())
            .flatMapToDouble(p -> Arrays.stream(p.values()))
            .max()
            .orElse(0);
    return sessions.stream()
        .flatMap(s -> s.conditions().amount(ConditionItem.STATION_RATED_POWER).stream())
        .anyMatch(rated -> rated.value() < HEADROOM * peak);
  }

  /** Describes how sessions of a warm and a cold day differ, apart from their temperatures. */
  public static List<String> unlikeBesideSeason(Session warm, Session cold) {
    return unlike(List.of(warm, cold)).stream()
        .filter(item -> item != ConditionItem.AMBIENT_TEMPERATURE)
        .filter(item -> item != ConditionItem.BATTERY_TEMPERATURE_AT_START)
        .map(ConditionItem::words)
        .toList();
  }

  /** Describes how drives on a warm and a cold day differ, apart from the temperature. */
  public static List<String> unlikeBesideSeason(RangeTest warm, RangeTest cold) {
    List<String> words = new ArrayList<>();
    List<Double> speeds =
        Stream.of(warm, cold)
            .flatMap(t -> t.facts().amount(RangeItem.AVERAGE_SPEED).stream())
            .map(Estimate::value)
            .toList();
    if (range(speeds) > Drives.SAME_SPEED) {
      words.add(RangeItem.AVERAGE_SPEED.words());
    }
    for (RangeItem item : List.of(RangeItem.CLIMATE_CONTROL, RangeItem.ROUTE)) {
      if (!warm.facts().text(item).equals(cold.facts().text(item))) {
        words.add(item.words());
      }
    }
    return words;
  }

  /** Describes how runs of one session differ: conditions and the start. */
  public static List<String> differencesOfRuns(List<Session> runs) {
    List<String> words = new ArrayList<>();
    unlike(runs).forEach(item -> words.add(item.words()));
    if (startsApart(runs)) {
      words.add("the state of charge at the start");
    }
    return words;
  }

  /** Returns true if the sessions started at states of charge that are not similar. */
  public static boolean startsApart(List<Session> sessions) {
    List<Double> starts =
        sessions.stream()
            .flatMap(s -> s.trace(Channel.SOC).stream())
            .map(Trace::firstValue)
            .toList();
    return range(starts) > START_PERCENT;
  }

  private static double range(List<Double> values) {
    double most = values.stream().mapToDouble(v -> v).max().orElse(0);
    return most - values.stream().mapToDouble(v -> v).min().orElse(0);
  }
}
