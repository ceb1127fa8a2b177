package taperbook.result;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import java.util.regex.Pattern;
import taperbook.plan.Basis;
import taperbook.quantity.Unit;
import taperbook.session.Caveat;
import taperbook.session.Input;

/**
 * Definition of a number: everything that is known of it before it is measured. What shows or
 * selects numbers goes by their definitions.
 *
 * @param id its name, stable and documented, such as {@code time_to_soc_80}
 * @param label the number in words, such as {@code Time from plugging in to 80 %}
 * @param unit unit of the outcome, a base unit
 * @param method how it is computed
 * @param basis what it rests on
 * @param inputs what it is computed from; those of the method are added
 * @param roles where it is shown
 */
public record Metric(
    String id,
    String label,
    Unit unit,
    Method method,
    Basis basis,
    Set<Input> inputs,
    Set<Role> roles) {
  private static final Pattern ID = Pattern.compile("[a-z][a-z0-9_]*");

  /**
   * Copies the sets, adds the inputs of the method and checks the form of the id.
   *
   * @throws IllegalArgumentException if the id has another form
   */
  public Metric {
    EnumSet<Input> all = EnumSet.copyOf(method.inputs());
    all.addAll(inputs);
    inputs = Collections.unmodifiableSet(all);
    roles = Set.copyOf(roles);
    if (!ID.matcher(id).matches()) {
      throw new IllegalArgumentException("not the id of a number: " + id);
    }
  }

  /** A number that is shown in the list of all numbers only. */
  public Metric(String id, String label, Unit unit, Method method, Basis basis, Set<Input> inputs) {
    this(id, label, unit, method, basis, inputs, Set.of());
  }

  /** Id of the number that leaves out interruptions of charging, by that of the one with them. */
  public static String withoutInterruptions(String id) {
    return id + "_without_interruptions";
  }

  /** A number that rests on the session's readings. */
  public static Metric charging(String id, String label, Unit unit, Method method) {
    return new Metric(id, label, unit, method, Basis.READINGS, Input.CHARGING);
  }

  /** True if a caveat concerns one of the number's inputs. */
  public boolean isConcernedBy(Caveat caveat) {
    return !Collections.disjoint(inputs, caveat.kind().concerned());
  }

  /** The same number shown in one more place. */
  public Metric in(Role role) {
    EnumSet<Role> all = EnumSet.of(role);
    all.addAll(roles);
    return new Metric(id, label, unit, method, basis, inputs, all);
  }

  /** The same number under another label. */
  public Metric labelled(String otherLabel) {
    return new Metric(id, otherLabel, unit, method, basis, inputs, roles);
  }

  /** The same number by another method. */
  public Metric with(Method otherMethod) {
    return new Metric(id, label, unit, otherMethod, basis, inputs, roles);
  }
}
