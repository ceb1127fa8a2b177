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
 * What all sessions of a report went through, so that they can be compared like for like. The
 * numbers on it are among those of each session.
 *
 * @param shared window of state of charge that all sessions went through, if there is one of 1 % or
 *     more
 * @param warmed the part of it in which all have left the climb that a session begins with, if
 *     there is one and it is not the whole
 * @param energyKilowattHours an energy that every session added after the lower edge of the shared
 *     window, whole kWh, if there is one
 * @param frozen the published version that it was taken over from, if it was not found anew
 */
public record CommonGround(
    Optional<SocWindow> shared,
    Optional<SocWindow> warmed,
    OptionalInt energyKilowattHours,
    Optional<Frozen> frozen) {
  /** No common ground: of a single session, or of sessions that share nothing. */
  public static final CommonGround NONE =
      new CommonGround(Optional.empty(), Optional.empty(), OptionalInt.empty());

  /**
   * Where a common ground was taken over from.
   *
   * @param since day of the published version that it was found for
   * @param anew the windows that the readings would give now
   */
  public record Frozen(LocalDate since, List<SocWindow> anew) {
    /** Copies the list. */
    public Frozen {
      anew = List.copyOf(anew);
    }
  }

  /** A common ground that was found for this version. */
  public CommonGround(
      Optional<SocWindow> shared, Optional<SocWindow> warmed, OptionalInt energyKilowattHours) {
    this(shared, warmed, energyKilowattHours, Optional.empty());
  }

  /** The same ground, taken over from the version of a day, or from an earlier one. */
  public CommonGround frozenSince(LocalDate day) {
    return new CommonGround(
        shared,
        warmed,
        energyKilowattHours,
        Optional.of(frozen.orElse(new Frozen(day, List.of()))));
  }

  /** The windows that there are: the shared one and the warmed one. */
  public List<SocWindow> windows() {
    return Stream.of(shared, warmed).flatMap(Optional::stream).toList();
  }

  /**
   * Ids of the numbers that are like for like: over what all sessions went through, from there on,
   * and over the windows that were asked for.
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

  /** Id of the number that tells the time to add a distance from a state of charge on, %. */
  public static String timeToAddId(WantedDistance distance, int fromSoc) {
    return "time_to_add_" + distance.idPart() + "_from_" + fromSoc;
  }

  /** Id of the number that tells the time to add an energy from a state of charge on, %. */
  public static String timeToAddId(int kilowattHours, int fromSoc) {
    return "time_to_add_" + kilowattHours + "_kwh_from_" + fromSoc;
  }
}
