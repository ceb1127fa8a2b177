package taperbook.measure.ledger;

import taperbook.model.Basis;
import taperbook.model.Caveat;
import taperbook.model.Method;
import taperbook.model.Unit;

/**
 * What is said of a number before it is measured.
 *
 * @param id its stable name
 * @param label the number in words
 * @param unit its unit, a base unit
 * @param method how it is computed
 * @param basis what it rests on
 * @param scope which caveats concern it
 */
public record Entry(String id, String label, Unit unit, Method method, Basis basis, Scope scope) {
  /** An entry that rests on the session's readings. */
  public static Entry charging(String id, String label, Unit unit, Method method) {
    return new Entry(id, label, unit, method, Basis.READINGS, Scope.CHARGING);
  }

  /**
   * True if a caveat concerns the number whatever it spans: that of an energy counter only where
   * energy enters, that of an interruption only where the whole session does.
   */
  boolean isConcernedBy(Caveat caveat) {
    return scope.concerns(caveat)
        && switch (caveat.kind()) {
          case ENERGY_COUNTER -> method.restsOnEnergy();
          case INTERRUPTION -> method.spansSession();
          default -> true;
        };
  }

  /** The same number under other words. */
  public Entry labelled(String otherLabel) {
    return new Entry(id, otherLabel, unit, method, basis, scope);
  }

  public Entry with(Method otherMethod) {
    return new Entry(id, label, unit, otherMethod, basis, scope);
  }
}
