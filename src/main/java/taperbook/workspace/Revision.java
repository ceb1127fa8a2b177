package taperbook.workspace;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.SourceLocation;
import taperbook.i18n.Texts;
import taperbook.plan.ReportPlan;
import taperbook.result.Correction;
import taperbook.result.MovedNumber;
import taperbook.session.InputFile;
import taperbook.verify.CarriedReport;
import taperbook.verify.NumberMoves;
import taperbook.verify.NumbersFile;

/**
 * Compares a report with its published versions: the numbers of a published version must not change
 * without a correction, and each correction states its day, reason and cause.
 */
public final class Revision {
  private static final int MAX_NAMED = 3;

  private final ReportPlan plan;
  private final PublishedVersions earlier;
  private final MetricRerun rerun;

  /**
   * Creates the revision of a report.
   *
   * @param plan its plan
   * @param earlier the versions that were published
   * @param rerun recomputes numbers from other files, to determine why they moved
   */
  public Revision(ReportPlan plan, PublishedVersions earlier, MetricRerun rerun) {
    this.plan = plan;
    this.earlier = earlier;
    this.rerun = rerun;
  }

  /**
   * The result of the comparison.
   *
   * @param corrections all corrections up to this version, in order
   * @param freeze the day to store this version under, if it is published for the first time
   */
  public record Outcome(List<Correction> corrections, Optional<LocalDate> freeze) {}

  /**
   * Returns the result if no earlier version was published, or if only a record is embedded: the
   * numbers are not compared then.
   */
  public Optional<Checked<Outcome>> withoutNumbers() {
    Optional<LocalDate> day = plan.heading().versionDay();
    if (earlier.isCarried() || day.isEmpty()) {
      return Optional.of(
          earlier.recorded().then(all -> Checked.good(new Outcome(all, Optional.empty()))));
    }
    return earlier.newest().isPresent()
        ? Optional.empty()
        : Optional.of(Checked.good(new Outcome(List.of(), toFreeze(day.get()))));
  }

  private Optional<LocalDate> toFreeze(LocalDate day) {
    return Optional.of(day).filter(d -> plan.heading().history().published());
  }

  /**
   * Returns the corrections of this version, or why it cannot be built, if an earlier one was
   * published.
   *
   * @param numbers its numbers
   * @param inputs the files it is built from
   * @param program name and version of the program
   */
  public Checked<Outcome> of(NumbersFile numbers, List<InputFile> inputs, String program) {
    LocalDate day = plan.heading().versionDay().orElseThrow();
    Map<String, InputFile> byPath = new TreeMap<>();
    inputs.forEach(i -> byPath.put(i.path(), i));
    Checked<List<Correction>> corrections = corrections(day, numbers, byPath, program);
    Optional<Checked<CarriedReport>> same = earlier.of(day);
    if (same.isPresent()) {
      return corrections.then(
          all ->
              same.get()
                  .then(
                      published ->
                          unchanged(
                              day,
                              NumberMoves.stated(published.numbers(), numbers),
                              new Outcome(all, Optional.empty()))));
    }
    return corrections.then(all -> uncorrected(all, toFreeze(day), numbers));
  }

  /** Returns the recorded corrections, and the one of this version's day. */
  private Checked<List<Correction>> corrections(
      LocalDate day, NumbersFile numbers, Map<String, InputFile> inputs, String program) {
    List<ReportPlan.Reason> reasons = plan.heading().history().corrections();
    Optional<LocalDate> since = earlier.dayBefore(day);
    if (reasons.isEmpty() || since.isEmpty()) {
      return Checked.good(List.of());
    }
    ReportPlan.Reason last = reasons.get(reasons.size() - 1);
    return earlier
        .recorded()
        .then(
            recorded ->
                earlier
                    .of(since.get())
                    .orElseThrow()
                    .then(
                        base -> {
                          List<Correction> all = new ArrayList<>();
                          recorded.stream().filter(c -> c.day().isBefore(day)).forEach(all::add);
                          List<MovedNumber> moved =
                              new Attribution(base, inputs, program, rerun).of(numbers);
                          all.add(new Correction(day, since.get(), last.words(), moved));
                          return Checked.good(all);
                        }));
  }

  /** Allows a published version to be rebuilt only with the same numbers. */
  private Checked<Outcome> unchanged(LocalDate day, List<MovedNumber> moved, Outcome outcome) {
    if (moved.isEmpty()) {
      return Checked.good(outcome);
    }
    boolean published = plan.heading().history().published();
    ProblemCode code = published ? ProblemCode.NUMBERS_MOVED : ProblemCode.NUMBERS_MOVED_IN_DRAFT;
    return Checked.of(outcome, List.of(problem(code, day, moved)));
  }

  /** Refuses a version of another day than the published one if it differs without a correction. */
  private Checked<Outcome> uncorrected(
      List<Correction> corrections, Optional<LocalDate> freeze, NumbersFile numbers) {
    Optional<LocalDate> newest = earlier.newest();
    Outcome outcome = new Outcome(corrections, freeze);
    if (newest.isEmpty() || !corrections.isEmpty()) {
      return Checked.good(outcome);
    }
    return earlier
        .of(newest.get())
        .orElseThrow()
        .then(
            published ->
                unchanged(newest.get(), NumberMoves.stated(published.numbers(), numbers), outcome));
  }

  private Problem problem(ProblemCode code, LocalDate day, List<MovedNumber> moved) {
    List<String> named =
        moved.stream()
            .limit(MAX_NAMED)
            .map(m -> Texts.of("project.revision.of", m.id(), m.session()))
            .toList();
    return new Problem(
        code,
        SourceLocation.file(plan.article().file()),
        Texts.of(
            "project.revision.moved_since_version_published_on",
            Texts.count(moved.size(), "count.number", "count.numbers"),
            day,
            String.join(", ", named),
            moved.size() > named.size() ? ", ..." : ""),
        Texts.of("project.revision.numbers_as_published_or_correction"),
        Texts.of("project.revision.below_key_corrections_write_day"));
  }
}
