package taperbook.metric;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import taperbook.i18n.Texts;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.plan.ReportPlan;
import taperbook.result.CommonGround;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Numbers;
import taperbook.result.Outcome;
import taperbook.result.PairResult;
import taperbook.result.ReportNumber;
import taperbook.result.Role;
import taperbook.result.Runs.Spread;
import taperbook.result.SessionResult;
import taperbook.session.Caveat;
import taperbook.session.RowRef;

/** The differences between the numbers of two sessions on their common ground. */
final class PairMetrics {
  private final SessionResult one;
  private final SessionResult other;
  private final String otherName;
  private final Spread runs;

  /**
   * Creates the metrics of a pair.
   *
   * @param one the reported session
   * @param other the session it is compared with
   * @param otherName name of the other session in labels
   * @param runs spread between runs
   */
  PairMetrics(SessionResult one, SessionResult other, String otherName, Spread runs) {
    this.one = one;
    this.other = other;
    this.otherName = otherName;
    this.runs = runs;
  }

  /**
   * Returns a difference for each number that both sessions have, with and without interruptions.
   */
  Numbers measure(CommonGround ground, ReportPlan.Wishes wishes) {
    MetricCollector collector =
        new MetricCollector(one.session().name(), other.session().name(), List.of());
    String headline = ground.shared().map(w -> "time_soc_" + w.idPart()).orElse("");
    for (String id : ground.ids(wishes)) {
      Optional<Role> role = id.equals(headline) ? Optional.of(Role.HEADLINE) : Optional.empty();
      add(id, one.numbers().find(id), other.numbers().find(id), role, collector);
      String without = Metric.withoutInterruptions(id);
      Optional<ReportNumber> steady = one.numbers().find(without);
      Optional<ReportNumber> otherSteady = other.numbers().find(without);
      if (steady.isPresent() || otherSteady.isPresent()) {
        add(
            without,
            steady.or(() -> one.numbers().find(id)),
            otherSteady.or(() -> other.numbers().find(id)),
            Optional.empty(),
            collector);
      }
    }
    return collector.numbers();
  }

  private void add(
      String id,
      Optional<ReportNumber> mine,
      Optional<ReportNumber> theirs,
      Optional<Role> role,
      MetricCollector collector) {
    if (mine.isEmpty() || theirs.isEmpty()) {
      return;
    }
    ReportNumber a = mine.get();
    ReportNumber b = theirs.get();
    Optional<Outcome> difference = a.minus(b, Math.hypot(runs.halfWidth(a), runs.halfWidth(b)));
    Metric metric =
        new Metric(
            PairResult.differenceId(id),
            Texts.of("number.difference", a.label(), otherName),
            a.unit(),
            Method.DIFFERENCE,
            a.metric().basis(),
            a.metric().inputs(),
            role.map(Set::of).orElse(Set.of()));
    List<RowRef> rows =
        Stream.concat(a.origin().rows().stream(), b.origin().rows().stream()).toList();
    List<Caveat> caveats =
        Stream.concat(a.caveats().stream(), b.caveats().stream()).distinct().toList();
    difference.ifPresent(d -> collector.add(metric, Finding.of(d, rows), caveats));
  }
}
