package taperbook.result;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import taperbook.quantity.Estimate;

/** The result of a measurement: a value with its interval, or the reason why there is none. */
public sealed interface Outcome {
  /**
   * A measured value.
   *
   * @param estimate the value and its interval, in the number's unit
   * @param coverage nominal coverage probability of the interval: 1 for bounds that hold whenever
   *     the stated assumptions hold
   * @param budget contributions to the interval, largest first; empty for bounds
   */
  record Measured(Estimate estimate, double coverage, List<Contribution> budget)
      implements Outcome {
    /** Creates a value with bounds and without a budget. */
    public Measured(Estimate estimate, double coverage) {
      this(estimate, coverage, List.of());
    }

    /** Checks that the coverage is in (0, 1]. */
    public Measured {
      budget = List.copyOf(budget);
      if (!(coverage > 0 && coverage <= 1)) {
        throw new IllegalArgumentException("no such coverage: " + coverage);
      }
    }
  }

  /**
   * No value.
   *
   * @param reason why, as a sentence without a full stop
   */
  record Withheld(String reason) implements Outcome {
    /** Checks that there is a reason. */
    public Withheld {
      if (reason.isBlank()) {
        throw new IllegalArgumentException("a number is withheld for a reason");
      }
    }
  }

  /** Returns the value with its interval, if present. */
  default Optional<Estimate> estimateIfMeasured() {
    return fold(m -> Optional.of(m.estimate()), w -> Optional.empty());
  }

  /** Returns the reason why there is no value, if there is none. */
  default Optional<String> reasonIfWithheld() {
    return fold(m -> Optional.empty(), w -> Optional.of(w.reason()));
  }

  /** Applies one function to a measured value and another to a withheld one. */
  default <R> R fold(
      Function<? super Measured, ? extends R> measured,
      Function<? super Withheld, ? extends R> withheld) {
    return this instanceof Measured m ? measured.apply(m) : withheld.apply((Withheld) this);
  }
}
