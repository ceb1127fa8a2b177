package taperbook.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import taperbook.build.CommandContext;
import taperbook.build.ReportBuild;
import taperbook.cli.Messages;
import taperbook.cli.ProcessContext;
import taperbook.cli.Request;
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
  private final Request request;
  private final Map<String, Refusal> refusals = new LinkedHashMap<>();
  private final Map<String, List<Problem>> lasting = new LinkedHashMap<>();
  private List<String> shownSteps = List.of();

  WatchRound(Messages messages, ProcessContext processContext, Request request) {
    this.messages = messages;
    this.processContext = processContext;
    this.request = request;
  }

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
        CommandContext.in(request.folder(), processContext.environment());
    List<String> names = commandContext.requestedReports(request);
    Map<String, List<Problem>> before = new LinkedHashMap<>(lasting);
    lasting.keySet().retainAll(names);
    refusals.keySet().retainAll(names);
    if (request.names().isEmpty()) {
      lasting.put("", commandContext.project().folderProblems());
    }
    reportNew("", before);
    showFirstSteps(commandContext.project());
    for (String name : names) {
      if (!process(commandContext, name, before, still)) {
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

  private boolean process(
      CommandContext commandContext,
      String name,
      Map<String, List<Problem>> before,
      BooleanSupplier still) {
    long started = processContext.clock().nanoTime();
    Checked<ReportBuild> making = commandContext.reportBuild(name);
    Optional<String> fingerprint = making.value().map(ReportBuild::fingerprint);
    PublishedFolder published = commandContext.published(name);
    if (fingerprint.isPresent() && isAsBefore(name, fingerprint.get())) {
      return true;
    }
    if (fingerprint.isPresent() && published.isMadeFrom(fingerprint.get())) {
      return upToDate(name, still);
    }
    messages.progress(0, 1, name);
    Checked<ReportBuild.Made> made = making.then(m -> m.make(messages.steps()));
    messages.endProgress();
    if (!still.getAsBoolean()) {
      return false;
    }
    List<Problem> problems = new ArrayList<>(made.problems());
    made.value().ifPresent(m -> problems.addAll(m.problems()));
    lasting.put(name, problems);
    boolean news = reportNew(name, before);
    if (made.value().isEmpty()) {
      refuse(name, fingerprint, news);
      return true;
    }
    return publish(commandContext, made.value().get(), name, started);
  }

  /** Returns true if the report was refused and would be refused again for the same reasons. */
  private boolean isAsBefore(String name, String fingerprint) {
    Refusal refusal = refusals.get(name);
    return refusal != null && refusal.fingerprint().filter(fingerprint::equals).isPresent();
  }

  private boolean upToDate(String name, BooleanSupplier still) {
    if (!still.getAsBoolean()) {
      return false;
    }
    if (refusals.remove(name) != null) {
      lasting.remove(name);
      messages.result(Texts.of("command.watch_round.mended_what_is_published_is", name));
    }
    return true;
  }

  private void refuse(String name, Optional<String> fingerprint, boolean news) {
    boolean first = refusals.put(name, new Refusal(fingerprint)) == null;
    if (first || news) {
      messages.result(Texts.of("command.watch_round.refused_what_was_published_of", name));
    }
  }

  /**
   * Returns false if another run published a report in the meantime, so that this version may be
   * based on an outdated one.
   */
  private boolean publish(
      CommandContext commandContext, ReportBuild.Made made, String name, long started) {
    AtomicBoolean waited = new AtomicBoolean();
    processContext
        .clock()
        .runUninterrupted(
            () -> {
              try (ReportLock lock = ReportLock.of(commandContext.reports(), name)) {
                waited.set(lock.waited());
                if (!lock.waited()) {
                  commandContext.published(name).replace(made.files(), made.fingerprint());
                }
              }
            });
    if (waited.get()) {
      return false;
    }
    refusals.remove(name);
    double seconds = (processContext.clock().nanoTime() - started) / NANOS_PER_SECOND;
    messages.result(
        Texts.of(
            "command.watch_round.made_in_s", name, String.format(Locale.ROOT, "%.1f", seconds)));
    ReportCommand.remarks(commandContext.published(name)).forEach(messages::remark);
    return true;
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
