package taperbook.result;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import java.util.regex.Pattern;
import taperbook.i18n.Texts;
import taperbook.plan.Basis;
import taperbook.quantity.Unit;
import taperbook.session.Caveat;
import taperbook.session.Input;

/**
 * Definition of a number: all properties that are known before it is measured. Code that displays
 * or selects numbers uses their definitions.
 *
 * @param id its name, stable and documented, such as {@code time_to_soc_80}
 * @param label description of the number, such as {@code Time from plugging in to 80 %}
 * @param unit unit of the outcome, a base unit
 * @param method how it is computed
 * @param basis the basis of its distances
 * @param inputs the data it is computed from; those of the method are added
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

  /** Creates the definition of a number that is shown only in the list of all numbers. */
  public Metric(String id, String label, Unit unit, Method method, Basis basis, Set<Input> inputs) {
    this(id, label, unit, method, basis, inputs, Set.of());
  }

  /** Returns the id of the variant of a number that excludes interruptions. */
  public static String withoutInterruptions(String id) {
    return id + "_without_interruptions";
  }

  /** Creates the definition of a number that is based on the session's readings. */
  public static Metric charging(String id, String label, Unit unit, Method method) {
    return new Metric(id, label, unit, method, Basis.READINGS, Input.CHARGING);
  }

  /** Creates a number of the session's readings whose label has the key {@code number.ID}. */
  public static Metric charging(String id, Unit unit, Method method) {
    return of(id, unit, method, Basis.READINGS, Input.CHARGING);
  }

  /** Creates a number whose label has the key {@code number.ID}. */
  public static Metric of(String id, Unit unit, Method method, Basis basis, Set<Input> inputs) {
    return new Metric(id, Texts.of("number." + id), unit, method, basis, inputs);
  }

  /** Returns true if a caveat applies to one of the number's inputs. */
  public boolean isConcernedBy(Caveat caveat) {
    return !Collections.disjoint(inputs, caveat.kind().concerned());
  }

  /** Returns the same definition with one more role. */
  public Metric in(Role role) {
    EnumSet<Role> all = EnumSet.of(role);
    all.addAll(roles);
    return new Metric(id, label, unit, method, basis, inputs, all);
  }

  /** Returns the same definition with another label. */
  public Metric labelled(String otherLabel) {
    return new Metric(id, otherLabel, unit, method, basis, inputs, roles);
  }

  /** Returns the same definition with another method. */
  public Metric with(Method otherMethod) {
    return new Metric(id, label, unit, otherMethod, basis, inputs, roles);
  }
}
