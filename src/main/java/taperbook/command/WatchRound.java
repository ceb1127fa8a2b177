package taperbook.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import taperbook.build.CommandContext;
import taperbook.build.ReportBuild;
import taperbook.build.ResultCache;
import taperbook.cli.Messages;
import taperbook.cli.ProcessContext;
import taperbook.cli.Request;
import taperbook.cli.WatchClock;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.i18n.Texts;
import taperbook.workspace.FirstSteps;
import taperbook.workspace.Project;
import taperbook.workspace.PublishedFolder;
import taperbook.workspace.ReportLock;

/**
 * Builds outdated reports repeatedly and reports only what is new: a line for each report that was
 * built or refused, and each problem once while it persists.
 */
final class WatchRound {
  private static final double NANOS_PER_SECOND = 1e9;

  private final Messages messages;
  private final ProcessContext processContext;
  private final WatchClock clock;
  private final Request request;
  private final Map<String, Refusal> refusals = new LinkedHashMap<>();
  private final Map<String, List<Problem>> lasting = new LinkedHashMap<>();
  private final ResultCache results = ResultCache.ofLastReports();
  private List<String> shownSteps = List.of();

  WatchRound(Messages messages, ProcessContext processContext, Request request) {
    this.messages = messages;
    this.processContext = processContext;
    this.clock = processContext.clock();
    this.request = request;
  }

  /**
   * One pass over the reports.
   *
   * @param before the problems that were known when it began
   * @param still returns whether the input is unchanged since then
   */
  private record Turn(
      CommandContext context, Map<String, List<Problem>> before, BooleanSupplier still) {}

  /** A refused report, with the fingerprint of its input, if there is one. */
  private record Refusal(Optional<String> fingerprint) {}

  /**
   * Processes all reports once.
   *
   * @param still returns whether the input is unchanged since the round began
   * @return false if the input changed, or if another run published a report, so that the round was
   *     aborted
   */
  boolean make(BooleanSupplier still) {
    CommandContext commandContext =
        CommandContext.in(request.folder(), processContext.environment(), results);
    List<String> names = commandContext.requestedReports(request);
    Map<String, List<Problem>> before = new LinkedHashMap<>(lasting);
    lasting.keySet().retainAll(names);
    refusals.keySet().retainAll(names);
    if (request.names().isEmpty()) {
      lasting.put("", commandContext.project().folderProblems());
    }
    reportNew("", before);
    showFirstSteps(commandContext.project());
    Turn turn = new Turn(commandContext, before, still);
    for (String name : names) {
      if (!process(turn, name)) {
        return false;
      }
    }
    return true;
  }

  /** Shows the next steps once while there is no report. */
  private void showFirstSteps(Project project) {
    List<String> steps = FirstSteps.of(project);
    if (!steps.equals(shownSteps)) {
      steps.forEach(messages::remark);
      shownSteps = steps;
    }
  }

  private boolean process(Turn turn, String name) {
    long started = clock.nanoTime();
    Checked<ReportBuild> making = turn.context().reportBuild(name);
    Optional<String> fingerprint = making.value().map(ReportBuild::fingerprint);
    PublishedFolder published = turn.context().published(name);
    if (fingerprint.isPresent() && isAsBefore(name, fingerprint.get())) {
      return true;
    }
    if (!turn.still().getAsBoolean()) {
      return false;
    }
    if (fingerprint.isPresent() && published.isMadeFrom(fingerprint.get())) {
      return upToDate(name);
    }
    if (making.value().isEmpty()) {
      return refused(turn, name, making.problems(), fingerprint);
    }
    try (ReportLock lock = ReportLock.of(turn.context().reports(), name)) {
      // If another run published a report meanwhile, this version may be based on an old one.
      return !lock.waited()
          && make(turn, making.value().get(), fingerprint.orElseThrow(), lock, started);
    }
  }

  private boolean make(
      Turn turn, ReportBuild making, String fingerprint, ReportLock lock, long started) {
    String name = making.plan().name();
    PublishedFolder published = turn.context().published(name);
    clock.onStop(
        () -> {
          published.recover();
          lock.close();
        });
    try {
      messages.progress(0, 1, name);
      Checked<ReportBuild.Made> made =
          making.make(messages.steps(), page -> show(turn, published, page));
      messages.endProgress();
      if (!turn.still().getAsBoolean()) {
        return false;
      }
      if (made.value().isEmpty()) {
        return refused(turn, name, made.problems(), Optional.of(fingerprint));
      }
      List<Problem> problems = new ArrayList<>(made.problems());
      problems.addAll(made.value().get().problems());
      lasting.put(name, problems);
      reportNew(name, turn.before());
      publish(published, made.value().get(), name, started);
      return true;
    } finally {
      // Restores the published page unless the new version is complete.
      clock.runUninterrupted(published::recover);
      clock.onStop(() -> {});
    }
  }

  /** Returns true if the report was refused and would be refused again for the same reasons. */
  private boolean isAsBefore(String name, String fingerprint) {
    Refusal refusal = refusals.get(name);
    return refusal != null && refusal.fingerprint().filter(fingerprint::equals).isPresent();
  }

  private boolean upToDate(String name) {
    if (refusals.remove(name) != null) {
      lasting.remove(name);
      messages.result(Texts.of("command.watch_round.mended_what_is_published_is", name));
    }
    return true;
  }

  private boolean refused(
      Turn turn, String name, List<Problem> problems, Optional<String> fingerprint) {
    lasting.put(name, problems);
    boolean news = reportNew(name, turn.before());
    boolean first = refusals.put(name, new Refusal(fingerprint)) == null;
    if (first || news) {
      messages.result(Texts.of("command.watch_round.refused_what_was_published_of", name));
    }
    return true;
  }

  /** Shows a page while the other files are still being made: a tester looks at it first. */
  private void show(Turn turn, PublishedFolder published, byte[] page) {
    if (turn.still().getAsBoolean()) {
      clock.runUninterrupted(() -> published.showPage(page));
    }
  }

  private void publish(
      PublishedFolder published, ReportBuild.Made made, String name, long started) {
    clock.runUninterrupted(() -> published.replace(made.files(), made.fingerprint()));
    refusals.remove(name);
    double seconds = (clock.nanoTime() - started) / NANOS_PER_SECOND;
    messages.result(
        Texts.of(
            "command.watch_round.made_in_s", name, String.format(Locale.ROOT, "%.1f", seconds)));
    ReportCommand.remarks(published).forEach(messages::remark);
  }

  /** Reports the problems that no report had before; returns true if there are any. */
  private boolean reportNew(String name, Map<String, List<Problem>> before) {
    Set<Problem> known = new LinkedHashSet<>();
    before.values().forEach(known::addAll);
    lasting.forEach(
        (other, problems) -> {
          if (!other.equals(name)) {
            known.addAll(problems);
          }
        });
    List<Problem> fresh =
        lasting.getOrDefault(name, List.of()).stream()
            .filter(p -> !known.contains(p))
            .distinct()
            .toList();
    messages.problems(fresh);
    return !fresh.isEmpty();
  }
}
