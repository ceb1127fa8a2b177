package taperbook.measure;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import taperbook.measure.ledger.Ledger;
import taperbook.model.Caveat;
import taperbook.model.CommonGround;
import taperbook.model.Method;
import taperbook.model.Metric;
import taperbook.model.Numbers;
import taperbook.model.Outcome;
import taperbook.model.PairResult;
import taperbook.model.ReportNumber;
import taperbook.model.ReportPlan;
import taperbook.model.Role;
import taperbook.model.RowRef;
import taperbook.model.Runs.Spread;
import taperbook.model.SessionResult;
import taperbook.words.Labels;

/** The numbers of a session less those of another, on what all sessions have in common. */
final class PairDifferences {
  private final SessionResult one;
  private final SessionResult other;
  private final String otherName;
  private final Spread runs;

  /**
   * Differences of a pair.
   *
   * @param one the reported session
   * @param other the session it is compared with
   * @param otherName what the other is called in labels
   * @param runs how far one run differs from another
   */
  PairDifferences(SessionResult one, SessionResult other, String otherName, Spread runs) {
    this.one = one;
    this.other = other;
    this.otherName = otherName;
    this.runs = runs;
  }

  /** A difference for each number that both have, and for those without interruptions. */
  Numbers measure(CommonGround ground, ReportPlan.Wishes wishes) {
    Ledger ledger = new Ledger(one.session().name(), other.session().name(), List.of());
    String headline = ground.shared().map(w -> "time_soc_" + w.idPart()).orElse("");
    for (String id : ground.ids(wishes)) {
      Optional<Role> role = id.equals(headline) ? Optional.of(Role.HEADLINE) : Optional.empty();
      enter(id, one.numbers().find(id), other.numbers().find(id), role, ledger);
      String without = Metric.withoutInterruptions(id);
      Optional<ReportNumber> steady = one.numbers().find(without);
      Optional<ReportNumber> otherSteady = other.numbers().find(without);
      if (steady.isPresent() || otherSteady.isPresent()) {
        enter(
            without,
            steady.or(() -> one.numbers().find(id)),
            otherSteady.or(() -> other.numbers().find(id)),
            Optional.empty(),
            ledger);
      }
    }
    return ledger.numbers();
  }

  private void enter(
      String id,
      Optional<ReportNumber> mine,
      Optional<ReportNumber> theirs,
      Optional<Role> role,
      Ledger ledger) {
    if (mine.isEmpty() || theirs.isEmpty()) {
      return;
    }
    ReportNumber a = mine.get();
    ReportNumber b = theirs.get();
    Optional<Outcome> difference = a.minus(b, Math.hypot(runs.halfWidth(a), runs.halfWidth(b)));
    Metric metric =
        new Metric(
            PairResult.differenceId(id),
            Labels.of("number.difference", a.label(), otherName),
            a.unit(),
            Method.DIFFERENCE,
            a.metric().basis(),
            a.metric().inputs(),
            role.map(Set::of).orElse(Set.of()));
    Set<RowRef> rows = new LinkedHashSet<>(a.origin().rows());
    rows.addAll(b.origin().rows());
    List<Caveat> caveats =
        Stream.concat(a.caveats().stream(), b.caveats().stream()).distinct().toList();
    difference.ifPresent(d -> ledger.enter(metric, d, List.copyOf(rows), caveats));
  }
}
