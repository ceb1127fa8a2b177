package taperbook.measure.ledger;

import java.util.EnumSet;
import java.util.Set;
import taperbook.model.Caveat;

/** What a number depends on, and so which caveats concern it. */
public enum Scope {
  /** Single readings. */
  READING(EnumSet.of(Caveat.Kind.READINGS)),
  /** The course of the charging session. */
  CHARGING(
      EnumSet.of(
          Caveat.Kind.INTERRUPTION,
          Caveat.Kind.BATTERY_TEMPERATURE,
          Caveat.Kind.PRECONDITIONING,
          Caveat.Kind.STARTING_SOC,
          Caveat.Kind.STATION_LIMIT,
          Caveat.Kind.STATION_SHARED,
          Caveat.Kind.ODOMETER,
          Caveat.Kind.AMBIENT_TEMPERATURE,
          Caveat.Kind.READINGS,
          Caveat.Kind.GAPS,
          Caveat.Kind.ENERGY_COUNTER,
          Caveat.Kind.CLOCK)),
  /** The range test. */
  DRIVE(EnumSet.of(Caveat.Kind.RANGE_TEST, Caveat.Kind.DRIVE)),
  /** One of several range tests: nothing that concerns their mean. */
  ONE_DRIVE(EnumSet.noneOf(Caveat.Kind.class)),
  /** The session and the range test. */
  ROAD(union(CHARGING, DRIVE));

  private final Set<Caveat.Kind> kinds;

  Scope(Set<Caveat.Kind> kinds) {
    this.kinds = kinds;
  }

  private static Set<Caveat.Kind> union(Scope one, Scope other) {
    Set<Caveat.Kind> all = EnumSet.copyOf(one.kinds);
    all.addAll(other.kinds);
    return all;
  }

  /** True if a caveat concerns a number of this scope. */
  public boolean concerns(Caveat caveat) {
    return kinds.contains(caveat.kind());
  }
}
