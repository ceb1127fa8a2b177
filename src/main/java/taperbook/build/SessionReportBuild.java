package taperbook.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import taperbook.cli.ProgressListener;
import taperbook.diagnostics.Checked;
import taperbook.format.NumberFormatter;
import taperbook.session.InputFile;
import taperbook.session.InputHash;
import taperbook.workspace.Project;
import taperbook.workspace.PublishedVersions;
import taperbook.workspace.ReportSources;

/** Builds the report of a session. */
final class SessionReportBuild implements ReportBuild {
  private final ReportSources sources;
  private final PublishedVersions earlier;
  private final CommandContext commandContext;

  SessionReportBuild(
      ReportSources sources, PublishedVersions earlier, CommandContext commandContext) {
    this.sources = sources;
    this.earlier = earlier;
    this.commandContext = commandContext;
  }

  @Override
  public String fingerprint() {
    List<InputHash> inputs = new ArrayList<>();
    sources.files().forEach(f -> inputs.add(f.withoutContent()));
    sources.plan().heading().versionDay().ifPresent(d -> inputs.addAll(earlier.hashesBefore(d)));
    return commandContext.fingerprint(inputs);
  }

  @Override
  public List<String> paths() {
    Set<String> paths = new TreeSet<>(commandContext.templatePaths());
    for (InputFile file : sources.files()) {
      paths.add(file.path());
      if (file.path().startsWith(Project.SESSIONS)) {
        paths.add(file.path().substring(0, file.path().lastIndexOf('/')));
      }
    }
    paths.addAll(earlier.paths());
    return List.copyOf(paths);
  }

  @Override
  public Checked<Made> make(ProgressListener steps) {
    return commandContext
        .pipeline()
        .make(sources, earlier, steps)
        .then(
            made -> {
              Summary summary = new Summary(made.result());
              return Checked.good(
                  new Made(
                      made.files(), fingerprint(), List.of(), summary.lines(), summary.printed()));
            });
  }

  @Override
  public NumberFormatter wording() {
    return new NumberFormatter(sources.plan().style());
  }

  @Override
  public Findings findings() {
    return commandContext.pipeline().findings(sources, earlier);
  }
}
