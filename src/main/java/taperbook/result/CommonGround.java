package taperbook.result;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import taperbook.plan.ReportPlan;
import taperbook.quantity.SocWindow;
import taperbook.quantity.WantedDistance;

/**
 * The ranges that all sessions of a report have in common, for a like-for-like comparison. Numbers
 * over these ranges are among those of each session.
 *
 * @param shared range of state of charge that all sessions cover, if there is one of 1 % or more
 * @param warmed the part of it in which all sessions have left the initial ramp, if there is one
 *     and it is not the whole
 * @param energyKilowattHours an energy that every session added above the lower edge of the shared
 *     range, whole kWh, if there is one
 * @param frozen the published version that it was taken from, if it was not determined for this
 *     version
 */
public record CommonGround(
    Optional<SocWindow> shared,
    Optional<SocWindow> warmed,
    OptionalInt energyKilowattHours,
    Optional<Frozen> frozen) {
  /** No common ground: for a single session, or for sessions that share nothing. */
  public static final CommonGround NONE =
      new CommonGround(Optional.empty(), Optional.empty(), OptionalInt.empty());

  /**
   * The source of a common ground that was taken from an earlier version.
   *
   * @param since day of the published version that it was determined for
   * @param current the windows that the current readings would give
   */
  public record Frozen(LocalDate since, List<SocWindow> current) {
    public Frozen {
      current = List.copyOf(current);
    }
  }

  /** Creates a common ground that was determined for this version. */
  public CommonGround(
      Optional<SocWindow> shared, Optional<SocWindow> warmed, OptionalInt energyKilowattHours) {
    this(shared, warmed, energyKilowattHours, Optional.empty());
  }

  /** Returns the same ground, marked as taken from the version of a day or an earlier one. */
  public CommonGround frozenSince(LocalDate day) {
    return new CommonGround(
        shared,
        warmed,
        energyKilowattHours,
        Optional.of(frozen.orElse(new Frozen(day, List.of()))));
  }

  /** Returns the windows that exist: the shared one and the warmed one. */
  public List<SocWindow> windows() {
    return Stream.of(shared, warmed).flatMap(Optional::stream).toList();
  }

  /**
   * Returns the ids of the like-for-like numbers: over the common ranges, from their lower edges
   * on, and over the requested windows.
   */
  public Set<String> ids(ReportPlan.Wishes wishes) {
    Set<String> ids = new LinkedHashSet<>();
    shared.ifPresent(w -> wishes.distances().forEach(d -> ids.add(timeToAddId(d, w.from()))));
    shared.ifPresent(w -> energyKilowattHours.ifPresent(e -> ids.add(timeToAddId(e, w.from()))));
    shared.ifPresent(w -> window(w, ids));
    shared.ifPresent(w -> ids.add("average_c_rate_" + w.idPart()));
    warmed.ifPresent(w -> wishes.distances().forEach(d -> ids.add(timeToAddId(d, w.from()))));
    warmed.ifPresent(w -> window(w, ids));
    wishes.windows().forEach(w -> window(w, ids));
    ids.addAll(List.of("consumption", "driven_range_full", "energy_per_soc"));
    return ids;
  }

  private static void window(SocWindow window, Set<String> ids) {
    ids.add("time_soc_" + window.idPart());
    ids.add("average_power_" + window.idPart());
  }

  /** Returns the id of the number for the time to add a distance from a state of charge, %. */
  public static String timeToAddId(WantedDistance distance, int fromSoc) {
    return "time_to_add_" + distance.idPart() + "_from_" + fromSoc;
  }

  /** Returns the id of the number for the time to add an energy from a state of charge, %. */
  public static String timeToAddId(int kilowattHours, int fromSoc) {
    return "time_to_add_" + kilowattHours + "_kwh_from_" + fromSoc;
  }
}
