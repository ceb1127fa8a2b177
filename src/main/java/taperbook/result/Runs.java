package taperbook.result;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import taperbook.quantity.Unit;

/**
 * The repeats of the reported session, and the spread between single runs.
 *
 * @param repeats the sessions that repeat the reported one, in order, with their headline numbers
 * @param mean mean power of all runs over state of charge, kW over %, with the 95 % interval of the
 *     mean; empty without repeats
 * @param spread the difference between one run and another
 */
public record Runs(List<SessionResult> repeats, Optional<Curve> mean, Spread spread) {
  /** One run of each session; the spread between runs is not known. */
  public static final Runs SINGLE = new Runs(List.of(), Optional.empty(), Spread.NOT_MEASURED);

  public Runs {
    repeats = List.copyOf(repeats);
  }

  /** Source of a run-to-run spread. */
  public enum Known {
    /** Not measured and not stated. */
    NOT_MEASURED,
    /** From repeats of the reported session. */
    REPEATS,
    /** Stated by the tester from another source. */
    STATED
  }

  /**
   * The difference between one run and another in excess of the reading uncertainty.
   *
   * @param known the kind of source
   * @param source description of the source: the number of runs, or the tester's statement
   * @param power half the 95 % interval of a run's power about the car's mean, as a share of it;
   *     applies to every power and charging time without a share of its own
   * @param byId the same for single numbers, by id
   */
  public record Spread(Known known, String source, double power, Map<String, Double> byId) {
    private static final Set<Unit> WITH_POWER = Set.of(Unit.SECOND, Unit.KILOWATT, Unit.PER_HOUR);

    /** The spread is not known, and no interval is widened. */
    public static final Spread NOT_MEASURED = new Spread(Known.NOT_MEASURED, "", 0, Map.of());

    public Spread {
      byId = Map.copyOf(byId);
    }

    /**
     * Returns half the 95 % interval that the spread adds to a number, in its unit; 0 if the number
     * is withheld, or if it is neither a power nor a time and has no share of its own.
     */
    public double halfWidth(ReportNumber number) {
      double share = byId.getOrDefault(number.id(), WITH_POWER.contains(number.unit()) ? power : 0);
      return number.estimate().map(e -> Math.abs(e.value()) * share).orElse(0.0);
    }
  }
}
