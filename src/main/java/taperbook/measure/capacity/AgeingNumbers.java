package taperbook.measure.capacity;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import taperbook.measure.course.Courses;
import taperbook.measure.energy.EnergyChange;
import taperbook.measure.energy.EnergyFit;
import taperbook.measure.ledger.Entry;
import taperbook.measure.ledger.Ledger;
import taperbook.measure.recording.Recording;
import taperbook.model.Caveat;
import taperbook.model.ConditionItem;
import taperbook.model.Estimate;
import taperbook.model.Method;
import taperbook.model.RowRef;
import taperbook.model.Session;
import taperbook.model.Unit;
import taperbook.words.Labels;

/** The change of the implied full energy against other sessions of the same vehicle. */
public final class AgeingNumbers {
  private static final String OTHER_CAUSES =
      " The battery's temperature, a new calibration of the displayed state of charge, and other"
          + " states of charge read move it too.";

  private final Recording recording;
  private final Optional<EnergyFit> line;
  private final Ledger ledger;
  private final Set<String> ids = new HashSet<>();

  public AgeingNumbers(Recording recording, Optional<EnergyFit> line, Ledger ledger) {
    this.recording = recording;
    this.line = line;
    this.ledger = ledger;
  }

  /** Measures the change against each other session of the vehicle; others are passed over. */
  public void measure(List<Session> others) {
    Optional<String> vehicle = vehicle(recording.session());
    for (Session other : others) {
      if (vehicle.isPresent() && vehicle.equals(vehicle(other))) {
        measure(other);
      }
    }
  }

  private static Optional<String> vehicle(Session session) {
    return session.conditions().text(ConditionItem.VEHICLE);
  }

  private void measure(Session session) {
    Recording other =
        Recording.of(
            session,
            new Courses(session, List.of(), Courses.FOR_LIBRARY, recording.courses().redraw()),
            recording.wording());
    Entry entry =
        Entry.charging(
            id(session.name()),
            Labels.of("number.full_energy_change", session.name()),
            Unit.PERCENT,
            Method.FULL_ENERGY_CHANGE);
    Optional<EnergyFit> before = CapacityNumbers.fit(other);
    if (line.isEmpty() || before.isEmpty()) {
      Recording without = line.isEmpty() ? recording : other;
      ledger.withheld(
          entry, "of " + without.session().name() + ": " + CapacityNumbers.whyNoFit(without));
      return;
    }
    Estimate change = EnergyChange.percent(line.get().perPercent(), before.get().perPercent());
    List<RowRef> rows = new ArrayList<>(line.get().rows());
    rows.addAll(before.get().rows());
    Caveat meaning = new Caveat(Caveat.Kind.ODOMETER, meaning(change, session));
    ledger.covered(entry, change, EnergyFit.COVERAGE, rows, List.of(meaning));
  }

  /** The session's name as part of an id; of two names that come out alike the second is marked. */
  private String id(String session) {
    String part = session.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "_");
    String id = "full_energy_change_" + part;
    int count = 2;
    while (!ids.add(id)) {
      id = "full_energy_change_" + part + "_" + count++;
    }
    return id;
  }

  private String meaning(Estimate change, Session other) {
    String against = "The implied full energy against " + other.name();
    if (change.bounds().contains(0)) {
      return against
          + " cannot be told from no change: its interval holds zero. That is not called ageing.";
    }
    if (change.value() > 0) {
      return against
          + " went up, and its interval excludes zero. That is not ageing."
          + OTHER_CAUSES;
    }
    if (!isLaterThan(other)) {
      return against
          + " is lower, and its interval excludes zero, but this session is not known to be the"
          + " later one. That is not called ageing."
          + OTHER_CAUSES;
    }
    return against
        + " went down, and its interval excludes zero, so that it may be called ageing."
        + OTHER_CAUSES;
  }

  /** True if both days are known and this session's is the later one; ISO dates sort as text. */
  private boolean isLaterThan(Session other) {
    Optional<String> here = recording.session().conditions().text(ConditionItem.DATE);
    Optional<String> there = other.conditions().text(ConditionItem.DATE);
    return here.isPresent() && there.isPresent() && here.get().compareTo(there.get()) > 0;
  }
}
