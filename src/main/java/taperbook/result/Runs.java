package taperbook.result;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import taperbook.quantity.Unit;

/**
 * What is known of how runs of one session differ: the runs that repeat the reported session, and
 * how far single runs may be apart.
 *
 * @param repeats the sessions that repeat the reported one, in order, with their headline numbers
 * @param mean mean power of all runs over state of charge, kW over %, with the 95 % interval of the
 *     mean; missing without repeats
 * @param spread how far one run differs from another
 */
public record Runs(List<SessionResult> repeats, Optional<Curve> mean, Spread spread) {
  /** One run of each session, with no word on how runs differ. */
  public static final Runs SINGLE = new Runs(List.of(), Optional.empty(), Spread.NOT_MEASURED);

  /** Copies the list. */
  public Runs {
    repeats = List.copyOf(repeats);
  }

  /** Where a run-to-run spread comes from. */
  public enum Known {
    /** Nobody measured or stated it. */
    NOT_MEASURED,
    /** From repeats of the reported session. */
    REPEATS,
    /** Stated by the tester, from elsewhere. */
    STATED
  }

  /**
   * How far one run differs from another beyond what the readings leave open.
   *
   * @param known where it comes from
   * @param source in words: how many runs, or what the tester states
   * @param power half the 95 % interval of a run's power about the car's mean, as a share of it; it
   *     counts for every power and charging time without a share of its own
   * @param byId the same for single numbers, by id
   */
  public record Spread(Known known, String source, double power, Map<String, Double> byId) {
    private static final Set<Unit> WITH_POWER = Set.of(Unit.SECOND, Unit.KILOWATT, Unit.PER_HOUR);

    /** Nothing is known, and nothing is added to any interval. */
    public static final Spread NOT_MEASURED = new Spread(Known.NOT_MEASURED, "", 0, Map.of());

    /** Copies the map. */
    public Spread {
      byId = Map.copyOf(byId);
    }

    /**
     * Half the 95 % interval that a run adds to a number, in its unit; 0 if it is withheld, and for
     * what is neither a power nor a time and has no share of its own.
     */
    public double halfWidth(ReportNumber number) {
      double share = byId.getOrDefault(number.id(), WITH_POWER.contains(number.unit()) ? power : 0);
      return number.estimate().map(e -> Math.abs(e.value()) * share).orElse(0.0);
    }
  }
}
