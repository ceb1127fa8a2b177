package taperbook.app;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import taperbook.problem.Checked;
import taperbook.problem.Problem;
import taperbook.proof.NumbersFile;

/** Makes reports that are out of date. */
final class ReportCommand {
  private static final String NUMBERS = "numbers.json";

  private final Messages messages;
  private final Surroundings surroundings;
  private final Set<Problem> told = new LinkedHashSet<>();

  ReportCommand(Messages messages, Surroundings surroundings) {
    this.messages = messages;
    this.surroundings = surroundings;
  }

  ExitStatus run(Request request) {
    Workshop workshop = Workshop.in(request.folder(), surroundings.environment());
    if (request.names().isEmpty()) {
      tell(workshop.project().folderProblems());
    }
    List<String> names = workshop.asked(request);
    if (names.isEmpty()) {
      FirstSteps.of(workshop.project()).forEach(messages::remark);
      return ExitStatus.INPUT_REFUSED;
    }
    int refused = 0;
    for (int i = 0; i < names.size(); i++) {
      messages.progress(i, names.size(), names.get(i));
      refused += make(workshop, names.get(i)) ? 0 : 1;
    }
    if (refused > 0) {
      messages.remark(
          refused == 1
              ? "One report was refused; what was published of it before is unchanged."
              : refused + " reports were refused; what was published of them is unchanged.");
    }
    return refused == 0 ? ExitStatus.DONE : ExitStatus.INPUT_REFUSED;
  }

  private boolean make(Workshop workshop, String name) {
    Checked<Making> making = workshop.making(name);
    // A lock that is there is held by another run, or was left behind by one that was killed.
    boolean clear =
        !workshop.published(name).isCutOff() && !ReportLock.isThere(workshop.reports(), name);
    if (clear && isUpToDate(workshop, name, making)) {
      return true;
    }
    if (clear && making.value().isEmpty()) {
      return refused(name, making.problems());
    }
    try (ReportLock lock = ReportLock.of(workshop.reports(), name)) {
      workshop.published(name).recover();
      if (clear && !lock.waited()) {
        return publish(workshop, name, making);
      }
      // What was read before may be older than what is published now.
      Checked<Making> again = workshop.making(name);
      return isUpToDate(workshop, name, again) || publish(workshop, name, again);
    }
  }

  private boolean isUpToDate(Workshop workshop, String name, Checked<Making> making) {
    PublishedFolder published = workshop.published(name);
    boolean same =
        !published.isCutOff()
            && making.value().map(m -> published.isMadeFrom(m.fingerprint())).orElse(false);
    if (same) {
      tell(making.problems());
      messages.outcome(name, "up to date");
    }
    return same;
  }

  private boolean refused(String name, List<Problem> problems) {
    tell(problems);
    messages.outcome(name, "refused");
    return false;
  }

  private boolean publish(Workshop workshop, String name, Checked<Making> making) {
    if (making.value().isEmpty()) {
      return refused(name, making.problems());
    }
    tell(making.problems());
    Checked<Making.Made> made = making.value().get().make(messages.steps());
    tell(made.problems());
    Optional<Making.Made> value = made.value();
    if (value.isEmpty()) {
      return refused(name, List.of());
    }
    tell(value.get().told());
    messages.steps().begin(1, "publishing");
    Optional<String> moved = moved(workshop, name, making.value().get(), value.get());
    workshop.published(name).replace(value.get().files().all(), value.get().fingerprint());
    messages.outcome(
        name, "made: reports/" + name + "/, " + value.get().files().all().size() + " files");
    value.get().summary().forEach(messages::result);
    moved.ifPresent(messages::result);
    messages.result("  open " + workshop.reports().resolve(name).resolve("report.html"));
    return true;
  }

  /** What moved since the version that is to be replaced, if there is one. */
  private static Optional<String> moved(
      Workshop workshop, String name, Making making, Making.Made made) {
    return workshop
        .published(name)
        .bytes(NUMBERS)
        .flatMap(b -> NumbersFile.read(NUMBERS, b).value())
        .map(b -> new MovedLine(making.wording()).of(b, fresh(made)));
  }

  private static NumbersFile fresh(Making.Made made) {
    return NumbersFile.read(NUMBERS, made.files().bytes(NUMBERS)).value().orElseThrow();
  }

  /** Tells each problem once, however many reports use the file that it is in. */
  private void tell(List<Problem> problems) {
    messages.problems(problems.stream().filter(told::add).toList());
  }
}
