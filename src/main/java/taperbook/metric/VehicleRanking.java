package taperbook.metric;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import taperbook.metric.course.RandomNumbers;
import taperbook.metric.fit.Quantiles;
import taperbook.quantity.Estimate;
import taperbook.result.LibraryRow;
import taperbook.result.Ranking;

/**
 * Ranks vehicles by a number of their sessions, among sessions under similar conditions. The
 * intervals of ranks contain all true ranks simultaneously in 95 % of cases.
 *
 * <pre>
 *   mean      x = sum of x[i] / n
 *   variance  u^2 = mean of u[i]^2 + r^2 x^2 / n, as the inputs of sessions of a car may be shared
 *   ranks     from 1 + number certainly less, to n - number certainly greater;
 *             certainly if |x - y| &gt; z sqrt(ux^2 + uy^2),  z = normal quantile at 1 - 0.05 / 2 / pairs
 * </pre>
 *
 * with {@code r} the relative spread between runs: stated, or else that of all vehicles with two
 * sessions or more under similar conditions, pooled as in ISO 5725-2 and multiplied by t / z for
 * its degrees of freedom. Where no comparison of a pair is wrong, no interval of ranks is: a region
 * for all ranks after M. Klein, T. Wright, J. Wieczorek, "A joint confidence region for an overall
 * ranking of populations", Journal of the Royal Statistical Society C 69 (2020) 589-606, with
 * Bonferroni's bound for all pairs; both cited from memory.
 */
public final class VehicleRanking {
  private static final double MISSED = 0.05;

  private VehicleRanking() {}

  /** A mean and its standard uncertainty. */
  record Mean(double value, double uncertainty) {}

  /**
   * The spread between runs of a car.
   *
   * @param relative standard deviation as a share
   * @param degrees degrees of freedom; 0 if the spread is stated, or unknown and zero
   */
  record Spread(double relative, int degrees) {
    /** Returns z widened for few degrees of freedom, by the series of Student's t in z. */
    double widened(double z) {
      double f = Math.max(1, degrees);
      double z2 = z * z;
      double first = (z2 + 1) / 4;
      double second = ((5 * z2 + 16) * z2 + 3) / 96;
      double third = (((3 * z2 + 19) * z2 + 17) * z2 - 15) / 384;
      return degrees == 0 ? relative : relative * (1 + (first + (second + third / f) / f) / f);
    }
  }

  /** The interval of ranks of a mean. */
  record Ranks(int from, int to) {}

  /**
   * Returns the rankings of all groups of similar conditions with two or more vehicles.
   *
   * @param rows the sessions
   * @param id the number to rank by; less is better
   * @param relativeRunSpread standard deviation between runs of a car, as a share; 0 if unknown
   */
  public static List<Ranking> of(List<LibraryRow> rows, String id, double relativeRunSpread) {
    Map<String, Map<String, List<LibraryRow>>> groups = new TreeMap<>();
    for (LibraryRow row : rows) {
      if (row.numbers().estimate(id).isPresent()) {
        groups
            .computeIfAbsent(row.about().conditions(), c -> new TreeMap<>())
            .computeIfAbsent(row.about().vehicle(), v -> new ArrayList<>())
            .add(row);
      }
    }
    Spread spread = relativeRunSpread > 0 ? new Spread(relativeRunSpread, 0) : pooled(groups, id);
    List<Ranking> rankings = new ArrayList<>();
    groups.forEach(
        (conditions, vehicles) -> {
          if (vehicles.size() > 1) {
            rankings.add(ranking(conditions, vehicles, id, spread));
          }
        });
    return rankings;
  }

  private static Spread pooled(Map<String, Map<String, List<LibraryRow>>> groups, String id) {
    return pooled(
        groups.values().stream()
            .flatMap(vehicles -> vehicles.values().stream())
            .map(rows -> rows.stream().map(r -> estimate(r, id)).toList())
            .toList());
  }

  /** Returns the spread of runs about their mean, pooled over all cars. */
  static Spread pooled(List<List<Estimate>> cars) {
    double squares = 0;
    int degrees = 0;
    for (List<Estimate> runs : cars) {
      double mean = value(runs);
      squares += runs.stream().mapToDouble(e -> square(e.value() / mean - 1)).sum();
      degrees += runs.size() - 1;
    }
    return new Spread(degrees == 0 ? 0 : Math.sqrt(squares / degrees), degrees);
  }

  private static double value(List<Estimate> runs) {
    return runs.stream().mapToDouble(Estimate::value).average().orElseThrow();
  }

  private static Ranking ranking(
      String conditions, Map<String, List<LibraryRow>> vehicles, String id, Spread spread) {
    double widened = spread.widened(factor(vehicles.size()));
    List<Mean> means =
        vehicles.values().stream()
            .map(rows -> mean(rows.stream().map(r -> estimate(r, id)).toList(), widened))
            .toList();
    List<Ranks> ranks = ranks(means);
    List<Ranking.Place> places = new ArrayList<>();
    for (Map.Entry<String, List<LibraryRow>> vehicle : vehicles.entrySet()) {
      int k = places.size();
      List<LibraryRow> rising =
          vehicle.getValue().stream()
              .sorted(
                  Comparator.comparingDouble((LibraryRow r) -> estimate(r, id).value())
                      .thenComparing(LibraryRow::session))
              .toList();
      places.add(
          new Ranking.Place(
              vehicle.getKey(),
              rising.size(),
              rising.get((rising.size() - 1) / 2),
              Estimate.around(
                  means.get(k).value(), Quantiles.NORMAL_95 * means.get(k).uncertainty()),
              ranks.get(k).from(),
              ranks.get(k).to()));
    }
    places.sort(Comparator.comparingDouble(p -> p.mean().value()));
    return new Ranking(conditions, spread.relative(), spread.degrees(), places);
  }

  private static Estimate estimate(LibraryRow row, String id) {
    return row.numbers().estimate(id).orElseThrow();
  }

  static Mean mean(List<Estimate> runs, double relativeRunSpread) {
    double value = value(runs);
    double read =
        runs.stream()
            .mapToDouble(e -> square(e.bounds().width() / 2 / Quantiles.NORMAL_95))
            .average()
            .orElseThrow();
    return new Mean(value, Math.sqrt(read + square(relativeRunSpread * value) / runs.size()));
  }

  /**
   * Returns the number of standard uncertainties at which a pair of vehicles is certainly
   * separated.
   */
  static double factor(int vehicles) {
    double pairs = vehicles * (vehicles - 1) / 2.0;
    return vehicles < 2 ? 0 : RandomNumbers.quantile(1 - MISSED / 2 / pairs);
  }

  /** Returns the ranks of all means simultaneously, by comparing all pairs. */
  static List<Ranks> ranks(List<Mean> means) {
    int n = means.size();
    double z = factor(n);
    List<Ranks> ranks = new ArrayList<>();
    for (Mean one : means) {
      int less = 0;
      int greater = 0;
      for (Mean other : means) {
        double threshold = z * Math.hypot(one.uncertainty(), other.uncertainty());
        less += one.value() - other.value() > threshold ? 1 : 0;
        greater += other.value() - one.value() > threshold ? 1 : 0;
      }
      ranks.add(new Ranks(1 + less, n - greater));
    }
    return ranks;
  }

  private static double square(double x) {
    return x * x;
  }
}
